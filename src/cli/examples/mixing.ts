export const mixing = {
  temper: `  $ wetside temper --for taps --volume 600mL --want 38C --hot 55C --cold 12C --thing "glass 400g 15C" --explain
  406 mL of hot and 194 mL of cold make 600 mL at 38.0 °C.
  43 mL of the hot water only warms the vessel.

  600 mL × (38.0 °C − 12.0 °C) / (55.0 °C − 12.0 °C) = 363 mL      [heat balance of equal heat capacities]
  400.0 g of glass × 0.2 = 80.0 g of water                         [handbook value of borosilicate glass, 0.83 J/(g K), from memory]
  the vessel counts as 80.0 g of water at 15.0 °C: 42.8 mL of hot  [heat balance of equal heat capacities]
  by the whole balance of heat the rule is off by +0.1 °C          [IAPWS-IF97]`,
  dilute: `  $ wetside dilute --for floor --ratio 1+25 --total 250mL --floor 6mL --rolls 2 --tank "two-reel 600mL 2" --ratio 1+15
  It holds 9.6 mL of concentrate, and the rolls need 12 mL. This carries one roll.
  At this dilution they need 312 mL.
  In this volume they need 1 + 19.8 or stronger.
  The tank that does: two-reel.
  The dilution of the label that does: 1 + 15.
  Or mix this volume 2 times, with fewer rolls each time.`,
  formula: `  $ wetside formula --mix metol-hydroquinone-borax --volume 2L --have borax-penta
  Metol–hydroquinone–borax developer, 2000 mL:
  These figures are from memory. Hold them against a page before you trust them.
  Begin with 1500 mL of water, 32.0 °C to 52.0 °C.
  1. 4.00 g of metol.
     A pinch of the sulfite goes in before it, the rest after it.
     Gloves: skin can become allergic to it.
     Raise no dust, and breathe none.
  2. 200.0 g of sodium sulfite (anhydrous).
  3. 10.0 g of hydroquinone.
     Gloves: skin can become allergic to it.
     Raise no dust, and breathe none.
  4. 3.06 g of borax (pentahydrate), for 4.00 g of borax (decahydrate).
  Let each dissolve wholly before the next goes in.
  Make it up to 2000 mL with cold water.`,
} as const
