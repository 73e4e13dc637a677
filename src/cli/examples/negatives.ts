export const negatives = {
  strip: `  < 1.64\\n1.44\\n1.25\\n1.05\\n0.86\\n0.67\\n0.48\\n0.32\\n0.24\\n0.22\\n0.22
  $ wetside strip --tablet 11-step --lamp 0.05 --base 0.22
  Film speed ISO 100/21° (computed 101, 86.2 to 118).
  What reading and scatter leave open reaches past the limit: another strip may be judged otherwise.
  Average gradient, 0.10 over base and fog to 1.30 further: 0.61 (0.57 to 0.66).
  Average gradient, 0.10 over base and fog to 1.50 further: 0.62 (0.57 to 0.66).
  Average gradient, 0.10 over base and fog to 1.50 along the chord: 0.61 (0.57 to 0.66).
  Contrast index, short form by a chord of 2.00: 0.62 (0.58 to 0.66).
  Average gradient, 0.25 to 2.00 over base and fog: undefined. This gradient needs a density of 2.22, and this curve ends at 1.64. It is not defined for this strip; use another measure, or expose more.
  Contrast index by arcs of 0.2 and 2.2: 0.62 (0.58 to 0.67).
  Gamma, the steepest mean slope over 0.90: 0.66 (0.60 to 0.71).
  Steps 0.30 apart can hide the toe: the speed’s interval is a little too narrow.`,
  contrast: `  < 4:00 0.50\\n8:00 0.75
  $ wetside contrast --wanted 0.62 --explain
  Develop 5:35 for a contrast of 0.62 (5:06 to 6:03).
  Two strips say nothing about when the image begins: it is taken to begin at once. A third strip would tell.

  4:00: contrast 0.500, the law 0.500                        [contrast as given]
  8:00: contrast 0.750, the law 0.750                        [contrast as given]
  G = 1.000 · (1 − exp(−0.1733 · (t − 0:00))), t in minutes  [closed form from t and 2t, t0 = 0 assumed; Sheppard & Mees 1907]
  t = t0 − ln(1 − 0.62/1.000) / 0.1733 = 5:35                [the law turned round]
  with a scatter of 0.020 from strip to strip: 5:06 to 6:03  [scatter assumed until measured; Bates & Watts 1988, §6.1]`,
  index: `  < f/8 1/15 0.30\\nf/9.5 1/15 0.26\\nf/11 1/15 0.22\\nf/13 1/15 0.19\\nf/16 1/15 0.17
  $ wetside index --iso 400 --meter "f/11 1/15" --base 0.12
  f/8 1/15 is index 200: 0.18 over base and fog
  f/9.5 1/15 is index 283: 0.14 over base and fog
  f/11 1/15 is index 400: 0.10 over base and fog
  f/13 1/15 is index 566: 0.07 over base and fog
  f/16 1/15 is index 800: 0.05 over base and fog
  Your own index is 403 (328 to 495): set 400/27°. It holds for this camera, meter and development.`,
  density: `  $ wetside density --enlarger 10=13 --read 0.085 --known 0.085=0.10
  10 s against 13 s: 0.11 over base and fog, give or take 0.03.
  0.085 read is 0.10, give or take 0.01, for this scanner and setting only.`,
  zones: `  $ wetside zones --model flare --range 0.80
  With flare: normal is 7.3 stops less 0.40 of flare, the negative spans 0.80.
  N−3   10.3 stops  average gradient 0.30
  N−2    9.3 stops  average gradient 0.33
  N−1    8.3 stops  average gradient 0.38
  N      7.3 stops  average gradient 0.44
  N+1    6.3 stops  average gradient 0.53
  N+2    5.3 stops  average gradient 0.67
  N+3    4.3 stops  average gradient 0.89`,
  range: `  $ wetside range --subject 160 --flare 1.5 --gradient 0.60 --from 0.40 --to 1.40 --paper 2.50
  A subject of 160 : 1 with flare 1.5 is 64.6 : 1 at the film, 1.81; flare took 0.39.
  The negative then spans 1.09.
  A range of 1.09 suits paper of grade 2.
  From 0.40 to 1.40 there is room for 1.67, 5.5 stops.
  Film 0.60 on paper 2.50 prints at 1.50 in the middle of both.`,
  control: `  < 1-Mar 0.12 0.60 0.60\\n2-Mar 0.12 0.59 0.61\\n3-Mar 0.11 0.58 0.60\\n4-Mar 0.12 0.57 0.59\\n5-Mar 0.12 0.56 0.60\\n8-Mar 0.12 0.55 0.61
  $ wetside control --aim speed-step=0.60
  Act: The speed step.
  Base and fog is 0.00 from its aim. That is chance: leave the process alone.
  The speed step has fallen 5 times running and stands at −0.05. Nothing is outside yet; look for the cause now.
  Contrast is +0.01 from its aim. That is chance: leave the process alone.`,
  fit: `  < 77.6 10.07\\n190.8 23.93\\n289.0 35.18\\n434.8 50.76\\n593.1 66.40\\n760.0 81.78
  $ wetside fit rise
  y = b1·(1 − exp(−b2·x)), fitted in 20 steps.
  b1 = 239.1503 ± 4.58
  b2 = 0.0005497654 ± 0.0000124
  Scatter about it 0.1235, 4 values left over.`,
} as const
