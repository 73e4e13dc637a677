export const waste = {
  wash: `  < 7 x fill 300mL 3:00
  $ wetside wash - --fixer 60 --fresh 0:30 --now 0:42 --explain
  Enough, as an estimate.
  Estimated residue 0.00000422 g/m², or 0.000218 mg a roll: 3316 times below the limit of 0.014 g/m².
  Diffusion out of the gelatin decides; it alone needs 8:23 of moved water.
  Published least for such a wash: 20:00, seven changes.
  2100 mL of water in 21:00.
  Rinse film and walls first: the first fill would hold 0.4 g/L and not 2.

  60 g/L × 4 mL in and on a roll: 240 mg                                                                             [Torzynski, ENSP Strasbourg, 2004; strength stated, or assumed at 110 g/L]
  The water alone would leave less than 1 in a thousand million of the first strength: less than 0.000001 mg a roll  [(v/(V + v))^n, exp(−Q t/V)]
  Half-life in the gelatin: 60 s                                                                                     [NAVEDTRA 14209, p. 250]
  Diffusion alone would leave 1 in 2,097,152: 0.000114 mg a roll                                                     [0.5^(t/T½), moved water only]
  Both together, as the water fills up while the film gives: 0.000218 mg a roll                                      [two mixed parts, never below a layer by Fick’s law]
  At most 0.014 g/m²                                                                                                 [36 CFR 1238.14(c), citing ISO 18901]
  Published least for such a wash: 20:00, seven changes.                                                             [NAVEDTRA 14209, p. 250: 20 min, a full change each 3 min]`,
  silver: `  < 1L rolls 12\\n500mL read 2.5 0.5\\n2L water
  $ wetside silver - --limit 1.2 --explain
  About 3.1 g of silver in 3500 mL, somewhere from 1.9 to 5.5.
  0.888 g/L in the jug; 2072 mg/L in what held silver when it was poured.
  Above 5.0 mg/L, where the United States call waste hazardous (40 CFR 261.24, as of 2004).
  Above your own limit of 1.2 mg/L.
  Water in the jug changes no gram of it: 3.1 g are handed over, and the limits are held against the part that held silver.
  What may be poured away is for local codes and whoever receives it to say; a septic tank and a garden never.

  1000 mL after twelve rolls    [3 to 8 g/m², half to four fifths into the fixer: assumed]
  500 mL read at 2.5 g/L ± 0.5  [measured]
  2000 mL without silver        [stated]`,
  fumes: `  $ wetside fumes --sulfite 100 --acid 1L --percent 28 --explain
  Do not acidify a bath that holds sulfite: nearly every bath here does. Collect it, and ask whoever receives it.
  As it stands the bath is at pH 10.5, and less than 1 in a thousand million of its sulfite is sulfur dioxide.
  With the acid it comes to pH 4.1, and 0.00598 of it is sulfur dioxide: 0.304 g.
  In the air of 10 m³ that alone is 12 ppm; 5 for a quarter of an hour is the most at work, 100 is dangerous to life.
  More forms as it leaves: all of the sulfite would be 50.8 g, 1940 ppm.
  For 12 changes of air an hour a fan moves 120 m³/h.

  100 g/L of sulfite: 0.7934 mol/L   [over its molar mass]
  28 % of acetic acid: 4.6626 mol/L  [over its molar mass]
  pH where the charges balance       [pKa 1.85 and 7.2 of sulfurous, 4.756 of acetic acid, at 25 °C]
  0.304 g of gas in 10 m³            [24.45 L a mole, nothing blown out; NIOSH pocket guide]`,
} as const
