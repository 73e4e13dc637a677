export const baths = {
  rolls: `  $ wetside rolls 135-36 120=2 4x5=12 8x10=4 11x14=5 --explain
  19.625 rolls; 20 by the tally, a begun one counting as one.

  1 × 135-36 at 1: 1                                                [a roll by common convention]
  2 × 120 at 1: 2                                                   [a roll by common convention]
  12 × 4×5 at 0.25: 3                                               [its area over 80 square inches (516 cm²)]
  4 × 8×10 at 1: 4                                                  [a roll by common convention]
  5 × 11×14 at 1.925: 9.625                                         [its area over 80 square inches (516 cm²)]
  10149 cm² of film, its ends included: by area alone 19.66 rolls.  [sheets by their names; lengths of rolls assumed]`,
  fix: `  < rolls, clearing\\n3, 0:35\\n6, 0:39\\n10, 0:47
  $ wetside fix - --fresh 0:30 --now 0:47 --volume 1L --film 135-36=7 --film tabular:120=3 --explain
  Fix for 1:34: twice the 0:47 that clearing takes now.
  Clearing takes 1.57 times as long as when fresh; at 1:00 the bath is finished.
  Eight rolls more, or 4 of a tabular or high-iodide film.
  The count decides: 12 of 20 rolls are used.
  By four tests clearing will have doubled at 18 rolls in all, between 15.3 and 22.5.
  About 1.5 g/L of silver by now, somewhere from 0.8 to 3.3; a single bath ends at 4.

  2 × clearing for ordinary film                                                  [NAVEDTRA 14209, p. 249; three times by common practice]
  Clearing takes 1.57 times as long as when fresh; at 1:00 the bath is finished.  [finished at twice: NAVEDTRA 14209, p. 249]
  20 rolls a litre × 1 L: 20 rolls                                                [the label; without one 20 (acid) or 25 (alkaline), textbook 2008, p. 108]
  7 ordinary ÷ 1: 7 of the count                                                  [by definition]
  3 tabular ÷ 0.6: 5 of the count                                                 [assumption, until a label says otherwise]
  Left by count: 8                                                                [the count above]
  Left by silver: 15.83                                                           [3 to 8 g/m², half to four fifths of it: assumed; limit of a compliance guide]
  Left by tests: 8.03                                                             [a straight line; interval by Fieller, 95 in a hundred]
  Left by volume: not known                                                       [fill after fill, less what each carries out]`,
  life: `  < full 91\\nhalf-full 20
  $ wetside life --keeps stock-developer --explain
  83 % of its life is used. In a half-full bottle it keeps 10 days more.

  91 of 182 days in a full bottle: 0.500      [common practice]
  20 of 61 days in a half-full bottle: 0.328  [common practice]
  Together 0.828; at 1 it is past             [parts of a life add up]`,
  replenish: `  $ wetside replenish --volume 1L --rate 70mL --gives 50mg --rolls 20 --explain
  It settles at 0.714 g/L before topping up, 0.664 g/L after.
  42 rolls bring it all but 5 % of the way.
  After 20 rolls it holds 0.509 g/L.

  A roll gives 0.05 g: 0.05 g/L      [b/V]
  Topping up keeps 0.93 of the bath  [1 − R/V]
  0 + 0.7143 = 0.7143 g/L            [c_r + b/R, where a roll gives what topping up takes]`,
  stop: `  $ wetside stop --volume 1L --percent 1 --rolls 4 --published 12 --explain
  Eight rolls more, by the count published for this bath.
  By its acid it carries 24.5 rolls from fresh to the turning of the indicator, 33 until it is purple.

  1 % of acid: 0.1665 mol/L                                 [grams in 100 mL over its molar mass]
  At pH 5.2 74 % of it is neutralised: it takes 0.1225 mol  [pKa of the acid; bromocresol purple turns from 5.2 to 6.8]
  A roll brings 20 mL at 0.25 mol/L: 0.00500 mol            [assumption until measured]`,
} as const
