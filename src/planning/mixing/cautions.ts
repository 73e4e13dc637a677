import type { MixCaution, MixedProduct, MixHazard } from './definition.js'

const OF_HAZARD: Readonly<Record<MixHazard, readonly MixCaution[]>> = {
  acid: ['acid-into-water'],
  'strong-acid': ['acid-into-water', 'goggles-and-gloves'],
  caustic: ['caustic-into-cold-water', 'goggles-and-gloves'],
  sensitiser: ['sensitiser'],
  irritant: ['irritates'],
  fumes: ['fumes'],
  oxidiser: ['away-from-other-baths', 'goggles-and-gloves'],
  poison: ['poisonous', 'goggles-and-gloves'],
  flammable: ['no-flame'],
}

/** What counts at the line where a product goes in: by its hazards, its form and its role. */
export function cautionsFor({ role, form, hazards }: MixedProduct): readonly MixCaution[] {
  const all: MixCaution[] = hazards.flatMap((hazard) => OF_HAZARD[hazard])
  if (form === 'powder') all.push('no-dust')
  // Chlorine or worse: the one mistake at a sink that sends people to hospital.
  if (role === 'cleaner' || role === 'bleach') all.push('never-with-acid-or-fixer')
  return [...new Set(all)]
}
