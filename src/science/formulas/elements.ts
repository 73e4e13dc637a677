/**
 * Standard atomic weights, g/mol, of the elements that photographic chemicals are made of: Prohaska et al., Standard
 * atomic weights of the elements 2021 (IUPAC Technical Report), Pure Appl. Chem. 94 (2022) 573–600. All its digits;
 * where it gives an interval (H, Li, B, C, N, O, Mg, Si, S, Cl, Br, Pb), the conventional value of its abridged table.
 * Typed from memory; those without an interval agree to 40 parts in a million with sums over isotopes.
 */
export const ATOMIC_WEIGHTS: Readonly<Record<string, number>> = {
  H: 1.008,
  Li: 6.94,
  B: 10.81,
  C: 12.011,
  N: 14.007,
  O: 15.999,
  F: 18.998_403_162,
  Na: 22.989_769_28,
  Mg: 24.305,
  Al: 26.981_538_4,
  Si: 28.085,
  P: 30.973_761_998,
  S: 32.06,
  Cl: 35.45,
  K: 39.0983,
  Ca: 40.078,
  Cr: 51.9961,
  Mn: 54.938_043,
  Fe: 55.845,
  Co: 58.933_194,
  Ni: 58.6934,
  Cu: 63.546,
  Zn: 65.38,
  Se: 78.971,
  Br: 79.904,
  Ag: 107.8682,
  Sn: 118.71,
  I: 126.904_47,
  Ba: 137.327,
  Pt: 195.084,
  Au: 196.966_57,
  Hg: 200.592,
  Pb: 207.2,
}
