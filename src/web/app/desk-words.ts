import { deskProblems, learnProblems } from '../../kernel/index.js'
import { deskWords, learn } from '../../words/index.js'

/** Loaded with every page but those at the sink. */
learn(deskWords)
learnProblems(deskProblems)
