/** A chemical of the trade. Those of one `family` are the same salt with more or less water. */
export interface Salt {
  readonly id: string
  readonly name: string
  readonly formula: string
  readonly family: string
  /** Caustic goes into cold water, slowly, with goggles. */
  readonly handling?: 'caustic' | 'strong-acid' | 'dust' | 'sensitiser' | 'fumes'
}

/** The table of salts. Formulas are chemistry's; families and handling are common knowledge of the trade. */
export const SALTS: readonly Salt[] = [
  { id: 'hypo', name: 'sodium thiosulfate, crystalline', formula: 'Na2S2O3·5H2O', family: 'sodium thiosulfate' },
  { id: 'hypo-anhydrous', name: 'sodium thiosulfate, anhydrous', formula: 'Na2S2O3', family: 'sodium thiosulfate' },
  { id: 'ammonium-thiosulfate', name: 'ammonium thiosulfate', formula: '(NH4)2S2O3', family: 'ammonium thiosulfate' },
  { id: 'carbonate-anhydrous', name: 'sodium carbonate, anhydrous', formula: 'Na2CO3', family: 'sodium carbonate' },
  { id: 'carbonate-mono', name: 'sodium carbonate, monohydrate', formula: 'Na2CO3·H2O', family: 'sodium carbonate' },
  { id: 'carbonate-deca', name: 'sodium carbonate, crystalline', formula: 'Na2CO3·10H2O', family: 'sodium carbonate' },
  { id: 'bicarbonate', name: 'sodium bicarbonate', formula: 'NaHCO3', family: 'sodium bicarbonate' },
  { id: 'potassium-carbonate', name: 'potassium carbonate', formula: 'K2CO3', family: 'potassium carbonate' },
  { id: 'sulfite-anhydrous', name: 'sodium sulfite, anhydrous', formula: 'Na2SO3', family: 'sodium sulfite' },
  { id: 'sulfite-crystal', name: 'sodium sulfite, crystalline', formula: 'Na2SO3·7H2O', family: 'sodium sulfite' },
  {
    id: 'metabisulfite-sodium',
    name: 'sodium metabisulfite',
    formula: 'Na2S2O5',
    family: 'sodium metabisulfite',
    handling: 'fumes',
  },
  {
    id: 'metabisulfite-potassium',
    name: 'potassium metabisulfite',
    formula: 'K2S2O5',
    family: 'potassium metabisulfite',
    handling: 'fumes',
  },
  { id: 'borax-anhydrous', name: 'borax, anhydrous', formula: 'Na2B4O7', family: 'borax' },
  { id: 'borax-penta', name: 'borax, pentahydrate', formula: 'Na2B4O7·5H2O', family: 'borax' },
  { id: 'borax', name: 'borax, decahydrate', formula: 'Na2B4O7·10H2O', family: 'borax' },
  {
    id: 'metaborate-tetra',
    name: 'sodium metaborate, “tetrahydrate”',
    formula: 'NaBO2·2H2O',
    family: 'sodium metaborate',
  },
  {
    id: 'metaborate-octa',
    name: 'sodium metaborate, “octahydrate”',
    formula: 'NaBO2·4H2O',
    family: 'sodium metaborate',
  },
  { id: 'boric-acid', name: 'boric acid', formula: 'H3BO3', family: 'boric acid' },
  { id: 'bromide-potassium', name: 'potassium bromide', formula: 'KBr', family: 'potassium bromide' },
  { id: 'bromide-sodium', name: 'sodium bromide', formula: 'NaBr', family: 'sodium bromide' },
  {
    id: 'hydroxide-sodium',
    name: 'sodium hydroxide',
    formula: 'NaOH',
    family: 'sodium hydroxide',
    handling: 'caustic',
  },
  {
    id: 'hydroxide-potassium',
    name: 'potassium hydroxide',
    formula: 'KOH',
    family: 'potassium hydroxide',
    handling: 'caustic',
  },
  { id: 'sulfate-anhydrous', name: 'sodium sulfate, anhydrous', formula: 'Na2SO4', family: 'sodium sulfate' },
  { id: 'sulfate-crystal', name: 'sodium sulfate, crystalline', formula: 'Na2SO4·10H2O', family: 'sodium sulfate' },
  { id: 'potassium-alum', name: 'potassium alum', formula: 'KAl(SO4)2·12H2O', family: 'potassium alum' },
  { id: 'citric-acid', name: 'citric acid, anhydrous', formula: 'C6H8O7', family: 'citric acid' },
  { id: 'citric-acid-mono', name: 'citric acid, monohydrate', formula: 'C6H8O7·H2O', family: 'citric acid' },
  { id: 'acetic-acid', name: 'acetic acid', formula: 'CH3COOH', family: 'acetic acid', handling: 'strong-acid' },
  { id: 'ascorbic-acid', name: 'ascorbic acid', formula: 'C6H8O6', family: 'ascorbic acid' },
  { id: 'ascorbate', name: 'sodium ascorbate', formula: 'C6H7NaO6', family: 'sodium ascorbate' },
  { id: 'metol', name: 'metol', formula: '(C7H10NO)2SO4', family: 'metol', handling: 'sensitiser' },
  { id: 'hydroquinone', name: 'hydroquinone', formula: 'C6H6O2', family: 'hydroquinone', handling: 'sensitiser' },
  {
    id: 'phenyl-pyrazolidinone',
    name: '1-phenyl-3-pyrazolidinone',
    formula: 'C9H10N2O',
    family: 'phenyl-pyrazolidinone',
    handling: 'dust',
  },
]

/** A swap between different salts that the trade publishes, with what makes it right. */
export interface PublishedSwap {
  readonly wanted: string
  readonly have: string
  /** g of what is at hand for 1 g of what is called for. */
  readonly factor: 'by molar mass' | number
  /** Moles of what is at hand for one of what is called for; by molar mass only. */
  readonly moles?: number
  /** What goes with it; null where nothing has to. */
  readonly companion: { readonly salt: string; readonly molesEach: number; readonly why: string } | null
  readonly source: string
}

const BOOK = 'The Darkroom Cookbook, 3rd ed. 2008, pp. 329–330'

/** Published swaps. Where the book's row stands upside down, molar masses decide. */
export const PUBLISHED_SWAPS: readonly PublishedSwap[] = [
  { wanted: 'bromide-sodium', have: 'bromide-potassium', factor: 'by molar mass', companion: null, source: BOOK },
  { wanted: 'bromide-potassium', have: 'bromide-sodium', factor: 'by molar mass', companion: null, source: BOOK },
  { wanted: 'hydroxide-potassium', have: 'hydroxide-sodium', factor: 'by molar mass', companion: null, source: BOOK },
  { wanted: 'hydroxide-sodium', have: 'hydroxide-potassium', factor: 'by molar mass', companion: null, source: BOOK },
  { wanted: 'potassium-carbonate', have: 'carbonate-mono', factor: 'by molar mass', companion: null, source: BOOK },
  { wanted: 'carbonate-mono', have: 'potassium-carbonate', factor: 'by molar mass', companion: null, source: BOOK },
  {
    wanted: 'metabisulfite-potassium',
    have: 'metabisulfite-sodium',
    factor: 'by molar mass',
    companion: null,
    source: BOOK,
  },
  {
    wanted: 'metabisulfite-sodium',
    have: 'metabisulfite-potassium',
    factor: 'by molar mass',
    companion: null,
    source: BOOK,
  },
  {
    wanted: 'carbonate-mono',
    have: 'metaborate-octa',
    factor: 1.7,
    companion: null,
    source: `${BOOK}: the same activity, not the same moles`,
  },
  {
    wanted: 'metaborate-octa',
    have: 'carbonate-mono',
    factor: 0.59,
    companion: null,
    source: `${BOOK}: the same activity, not the same moles`,
  },
  {
    wanted: 'ascorbate',
    have: 'ascorbic-acid',
    factor: 'by molar mass',
    companion: {
      salt: 'bicarbonate',
      molesEach: 1,
      why: 'the acid must be neutralised, or the developer is too weak in alkali',
    },
    source: BOOK,
  },
]
