import type { z } from 'zod'
import type * as baths from './schemas/baths.js'
import type * as common from './schemas/common.js'
import type * as containers from './schemas/containers.js'
import type * as films from './schemas/films.js'
import type * as formulas from './schemas/formulas.js'
import type * as house from './schemas/house.js'
import type * as kit from './schemas/kit.js'
import type * as left from './schemas/left.js'
import type * as mixing from './schemas/mixing.js'
import type * as negatives from './schemas/negatives.js'
import type * as orders from './schemas/orders.js'
import type * as people from './schemas/people.js'
import type * as plans from './schemas/plans.js'
import type * as products from './schemas/products.js'
import type * as publishing from './schemas/published.js'
import type * as recipes from './schemas/recipes.js'
import type * as register from './schemas/register.js'
import type * as rolls from './schemas/rolls.js'
import type * as runs from './schemas/runs.js'
import type * as shelf from './schemas/shelf.js'
import type * as shelfAsked from './schemas/shelf-asked.js'
import type * as shelfPaper from './schemas/shelf-paper.js'
import type * as times from './schemas/times.js'
import type * as tones from './schemas/tones.js'
import type * as vessels from './schemas/vessels.js'
import type * as waste from './schemas/waste.js'

export { ANYBODY, BENCH, OWNER, ROLES, type Role } from './roles.js'
export {
  type AnswerOf,
  type BodyOf,
  type ParamsOf,
  type QueryOf,
  type Route,
  type RouteName,
  routes,
} from './routes.js'
export type { routesOfRolls } from './routes-of-rolls.js'
export type { routesOfShelf } from './routes-of-shelf.js'
export * as schemas from './schemas/index.js'
export { published } from './schemas/published.js'

export type ProblemBody = z.output<typeof common.ProblemBody>
export type TimeStatement = z.output<typeof times.TimeStatement>
export type TimeRecord = z.output<typeof times.TimeRecord>
export type TimeAnswer = z.output<typeof times.TimeAnswer>
export type TimeQuestion = z.output<typeof publishing.TimeQuestion>
export type DoseAnswer = z.output<typeof publishing.DoseAnswer>
export type ScoreAnswer = z.output<typeof publishing.ScoreAnswer>
export type ThermometerAnswer = z.output<typeof publishing.ThermometerAnswer>
export type StripQuestion = z.output<typeof negatives.StripQuestion>
export type StripAnswer = z.output<typeof negatives.StripAnswer>
export type IndexQuestion = z.output<typeof negatives.IndexQuestion>
export type IndexAnswer = z.output<typeof negatives.IndexAnswer>
export type DensityQuestion = z.output<typeof negatives.DensityQuestion>
export type DensityAnswer = z.output<typeof negatives.DensityAnswer>
export type ContrastQuestion = z.output<typeof negatives.ContrastQuestion>
export type ContrastAnswer = z.output<typeof negatives.ContrastAnswer>
export type ZonesQuestion = z.output<typeof tones.ZonesQuestion>
export type ZonesAnswer = z.output<typeof tones.ZonesAnswer>
export type RangeQuestion = z.output<typeof tones.RangeQuestion>
export type RangeAnswer = z.output<typeof tones.RangeAnswer>
export type ControlQuestion = z.output<typeof negatives.ControlQuestion>
export type ControlAnswer = z.output<typeof negatives.ControlAnswer>
export type FitQuestion = z.output<typeof negatives.FitQuestion>
export type FitAnswer = z.output<typeof negatives.FitAnswer>
export type TemperQuestion = z.output<typeof mixing.TemperQuestion>
export type TemperAnswer = z.output<typeof mixing.TemperAnswer>
export type BathFormulaBody = z.output<typeof formulas.BathFormula>
export type FormulaQuestion = z.output<typeof formulas.FormulaQuestion>
export type FormulaAnswer = z.output<typeof formulas.FormulaAnswer>
export type DiluteQuestion = z.output<typeof mixing.DiluteQuestion>
export type DiluteAnswer = z.output<typeof mixing.DiluteAnswer>
export type PastedReading = z.output<typeof times.PastedReading>
export type ThermometerStatement = z.output<typeof kit.ThermometerStatement>
export type ThermometerRecord = z.output<typeof kit.ThermometerRecord>
export type ThermometerCheck = z.output<typeof kit.ThermometerCheck>
export type AddCheck = z.output<typeof kit.AddCheck>
export type AddClassSet = z.output<typeof kit.AddClassSet>
export type ClassSetResult = z.output<typeof kit.ClassSetResult>
export type Settings = z.output<typeof house.Settings>
export type BenchView = z.output<typeof house.BenchView>
export type TodayView = z.output<typeof house.TodayView>
export type PairingCode = z.output<typeof people.PairingCode>
export type DeviceView = z.output<typeof people.DeviceView>
export type RecipeStatement = z.output<typeof recipes.RecipeStatement>
export type RecipeRecord = z.output<typeof recipes.RecipeRecord>
export type PlanRun = z.output<typeof plans.PlanRun>
export type AskedTank = PlanRun['tanks'][number]
export type PlannedTank = z.output<typeof plans.PlannedTank>
export type AskedOnReel = z.output<typeof plans.AskedOnReel>
export type OnReel = z.output<typeof plans.OnReel>
export type RunPlan = z.output<typeof plans.RunPlan>
export type KeptEvent = z.output<typeof runs.KeptEvent>
export type JudgeRun = z.output<typeof runs.JudgeRun>
export type RunVerdict = z.output<typeof runs.RunVerdict>
export type Run = z.output<typeof runs.Run>
export type RunSummary = z.output<typeof runs.RunSummary>
export type RollsQuestion = z.output<typeof baths.RollsQuestion>
export type RollsAnswer = z.output<typeof baths.RollsAnswer>
export type FixQuestion = z.output<typeof baths.FixQuestion>
export type FixAnswer = z.output<typeof baths.FixAnswer>
export type LifeQuestion = z.output<typeof baths.LifeQuestion>
export type LifeAnswer = z.output<typeof baths.LifeAnswer>
export type ReplenishQuestion = z.output<typeof baths.ReplenishQuestion>
export type ReplenishAnswer = z.output<typeof baths.ReplenishAnswer>
export type StopQuestion = z.output<typeof baths.StopQuestion>
export type StopAnswer = z.output<typeof baths.StopAnswer>
export type WashQuestion = z.output<typeof waste.WashQuestion>
export type WashAnswer = z.output<typeof waste.WashAnswer>
export type SilverQuestion = z.output<typeof waste.SilverQuestion>
export type SilverAnswer = z.output<typeof waste.SilverAnswer>
export type FumesQuestion = z.output<typeof waste.FumesQuestion>
export type FumesAnswer = z.output<typeof waste.FumesAnswer>
export type RollStatement = z.output<typeof rolls.RollStatement>
export type RollRecord = z.output<typeof rolls.RollRecord>
export type RollSummary = z.output<typeof rolls.RollSummary>
export type RollSummaries = z.output<typeof rolls.RollSummaries>
export type RollEvent = z.output<typeof rolls.RollEvent>
export type RollSearch = z.output<typeof rolls.RollSearch>
export type FindRolls = z.output<typeof rolls.FindRolls>
export type TakeInRolls = z.output<typeof rolls.TakeInRolls>
export type MoveRolls = z.output<typeof rolls.MoveRolls>
export type ChangeRolls = z.output<typeof rolls.ChangeRolls>
export type RollBatch = z.output<typeof rolls.RollBatch>
export type NumberBlock = z.output<typeof rolls.NumberBlock>
export type KeepView = z.output<typeof rolls.KeepView>
export type SavedView = z.output<typeof rolls.SavedView>
export type OrderStatement = z.output<typeof orders.OrderStatement>
export type OrderRecord = z.output<typeof orders.OrderRecord>
export type OrderStanding = z.output<typeof orders.OrderStanding>
export type FilmStatement = z.output<typeof films.FilmStatement>
export type FilmRecord = z.output<typeof films.FilmRecord>
export type VesselStatement = z.output<typeof vessels.VesselStatement>
export type VesselRecord = z.output<typeof vessels.VesselRecord>
export type { SameAsScore } from './schemas/same-as-score.js'
export type ProductStatement = z.output<typeof products.ProductStatement>
export type ProductRecord = z.output<typeof products.ProductRecord>
export type ContainerStatement = z.output<typeof containers.ContainerStatement>
export type EntryTold = z.output<typeof shelf.EntryTold>
export type MetFilm = z.output<typeof shelf.MetFilm>
export type ShelfTest = z.output<typeof shelf.ShelfTest>
export type Station = z.output<typeof shelf.Station>
export type LeftView = z.output<typeof left.LeftView>
export type AddContainer = z.output<typeof containers.AddContainer>
export type ContainerRecord = z.output<typeof containers.ContainerRecord>
export type ShelfEntry = z.output<typeof shelf.ShelfEntry>
export type LotHead = z.output<typeof shelf.LotHead>
export type LotHeads = z.output<typeof shelf.LotHeads>
export type LotView = z.output<typeof shelf.LotView>
export type OnShelf = z.output<typeof shelf.OnShelf>
export type JugView = z.output<typeof shelf.JugView>
export type Shelf = z.output<typeof shelf.Shelf>
export type Posted = z.output<typeof shelf.Posted>
export type FindLots = z.output<typeof shelf.FindLots>
export type LabelFacts = z.output<typeof shelfPaper.LabelFacts>
export type HandOverFacts = z.output<typeof shelfPaper.HandOverFacts>
export type FinishMix = z.output<typeof shelf.FinishMix>
export type FromShelf = z.output<typeof plans.FromShelf>
export type ShelfCost = z.output<typeof shelf.ShelfCost>
export type RunCost = z.output<typeof shelf.RunCost>
export type PairAsked = z.output<typeof shelfAsked.PairAsked>
export type PairView = z.output<typeof shelfAsked.PairView>
export type RotateBaths = z.output<typeof shelfAsked.RotateBaths>
export type Rotated = z.output<typeof shelfAsked.Rotated>
export type ShelfWash = z.output<typeof shelfAsked.ShelfWash>
export type ShelfWashAnswer = z.output<typeof shelfAsked.ShelfWashAnswer>
export type UseBath = z.output<typeof shelf.UseBath>
export type TestBath = z.output<typeof shelf.TestBath>
export type StationBath = z.output<typeof shelf.StationBath>
export type MovePortion = z.output<typeof shelf.MovePortion>
export type Discard = z.output<typeof shelf.Discard>
export type MeasureContents = z.output<typeof shelf.MeasureContents>
export type HandOver = z.output<typeof shelf.HandOver>
export type RollRegister = z.output<typeof register.RollRegister>
export type ImportedRegister = z.output<typeof register.ImportedRegister>
