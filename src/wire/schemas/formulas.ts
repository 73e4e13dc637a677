import { z } from 'zod'
import type { Celsius, Grams, Millilitres } from '../../kernel/index.js'
import { Name, Temperature, Text, Working } from './common.js'

const Degrees = Temperature as unknown as z.ZodType<Celsius>
const Volume = z.number().describe('millilitres') as unknown as z.ZodType<Millilitres>
const Mass = z.number().describe('grams') as unknown as z.ZodType<Grams>
const Salt = Text(60).describe('By its id or name in the table of salts.')
const Role = z.enum(['developer', 'stop', 'fixer', 'wash-aid', 'other'])

/** A bath by weight as somebody typed it: additions in the order of mixing, each of grams or of millilitres. */
export const BathFormula = z
  .strictObject({
    name: Name,
    role: Role.default('other'),
    additions: z
      .array(
        z.strictObject({
          salt: Salt,
          grams_per_l: z.number().optional(),
          ml_per_l: z.number().optional().describe('Of a liquid.'),
          percent: z.number().optional().describe('Of a liquid, by weight.'),
        }),
      )
      .min(1)
      .max(24),
    water_first: z.number().default(0.75).describe('Part of the final volume to begin with.'),
    water_c: z.strictObject({ low: Degrees, high: Degrees }).optional().describe('Left out, by the kind of bath.'),
    source: Text(200).default('as stated'),
  })
  .meta({ id: 'BathFormula' })

/** A bath to be mixed by weight: so much of it, or as much as there is of one of its salts. */
export const FormulaQuestion = z
  .strictObject({
    formula: z.union([Text(120).describe('Id or name of one that comes with the program.'), BathFormula]),
    volume_ml: Volume.optional().describe('One of this and `all_of`.'),
    all_of: z.strictObject({ salt: Salt, grams: Mass }).optional(),
    at_hand: z
      .array(
        z.strictObject({ salt: Salt, instead: Salt.optional().describe('The salt of the formula it stands for.') }),
      )
      .max(24)
      .default([]),
    scale_step_g: Mass.optional().describe('What the scale tells apart; 0.1 g when left out.'),
  })
  .meta({ id: 'FormulaQuestion' })

const Sentenced = z.object({ code: z.string(), sentence: z.string() })

export const FormulaAnswer = z
  .object({
    formula: z.object({
      id: z.string().nullable().describe('Null for one of your own.'),
      name: z.string(),
      role: Role,
      tag: z.enum(['source', 'memory', 'practice', 'own']),
      source: z.string(),
    }),
    volume_ml: z.number(),
    water: z.object({
      first_ml: z.number(),
      low_c: z.number(),
      high_c: z.number(),
      source: z.string(),
      cold: z.boolean().describe('Cold for caustic, whatever the bath’s own mixing water.'),
    }),
    lines: z.array(
      z.object({
        salt: z.string(),
        name: z.string(),
        grams: z.number().nullable(),
        ml: z.number().nullable(),
        percent: z.number().nullable(),
        called_for: z
          .object({
            salt: z.string(),
            grams: z.number(),
            factor: z.number(),
            kind: z.enum(['hydrate', 'published']),
            source: z.string(),
          })
          .nullable()
          .describe('What the formula calls for, where something else is at hand.'),
        solution: z
          .object({ percent: z.number(), measured_ml: z.number(), grams: z.number(), made_up_to_ml: z.number() })
          .nullable()
          .describe('Where the scale does not tell so little.'),
        cautions: z.array(Sentenced),
      }),
    ),
    doubts: z.array(Sentenced),
    sentences: z.array(z.string()),
    working: Working,
  })
  .meta({ id: 'FormulaAnswer' })

/** Published in docs/schemas by these names. */
export const formulas = {
  'bath-formula': BathFormula,
  'formula-question': FormulaQuestion,
  'formula-answer': FormulaAnswer,
}
