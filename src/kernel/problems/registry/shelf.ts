import { registered, unusable } from './registered.js'

const standing = (help: string, sentence: string) => registered(409, 65, help, sentence)

export const shelfProblems = {
  // What there is
  'shelf.not-enough': standing(
    'shelf#left',
    '{name} holds {held} {unit}; {wanted} {unit} were asked of it. Take less, or take another.',
  ),
  'shelf.too-full': standing('shelf#bottles', '{name} has room for {free} {unit} and {wanted} {unit} were to go in.'),
  'shelf.carries-no-more': standing(
    'shelf#left',
    '{name} carries {left} more rolls and {asked} were asked of it. Put in fewer, {out}.',
  ),
  'shelf.empty': standing('shelf#bottles', '{name} is empty. Choose one that holds something.'),
  'shelf.not-empty': standing('shelf#bottles', '{name} is not empty. A fresh lot goes into an empty bottle.'),
  'shelf.other-lot': standing('shelf#bottles', '{name} holds lot {code}; two lots do not go into one bottle.'),
  'shelf.changed-meanwhile': standing(
    'shelf#left',
    'Something was booked on {name} since you looked at it. Look again and repeat it.',
  ),
  'shelf.no-such-name': registered(
    404,
    66,
    'shelf#bottles',
    'Nothing on the shelf is called {name}. Look at the shelf for its names.',
  ),
  // The right bottle
  'shelf.wrong-lot': standing(
    'shelf#use',
    '{name} holds lot {code}, not the one that was named. Read its label again.',
  ),
  'shelf.wrong-role': standing(
    'shelf#use',
    '{name} holds {holds}, a {role}; this bath wants a {wanted}. Put it back and read the label.',
  ),
  'shelf.used-once': unusable('shelf#use', '{product} is used once: nothing goes back into {name}.'),
  'shelf.back-where': unusable('shelf#use', 'What is in {name} is used again. Say which bottle it went back into.'),
  'shelf.back-into-other': unusable(
    'shelf#use',
    'What came out of {name} goes back into {name}. Pour it over afterwards if it is to stand elsewhere.',
  ),
  'shelf.too-much-film': unusable(
    'shelf#use',
    '{rolls} rolls at once cannot be right; one use takes up to 10 000. Check the counts.',
  ),
  // Containers
  'shelf.not-a-bottle': unusable('shelf#bottles', '{name} is no bottle. Choose a bottle, a tank or a tray.'),
  'shelf.not-a-jug': unusable('shelf#waste', '{name} is no jug for waste.'),
  'shelf.jug-holds-waste': unusable(
    'shelf#waste',
    '{name} is a jug for waste; nothing is taken from it but by handing it over.',
  ),
  'shelf.bottles-come-empty': unusable(
    'shelf#bottles',
    '{name} comes to the shelf empty. Fill it by a mix, so that what is in it has a lot.',
  ),
  'shelf.stays-what-it-is': unusable(
    'shelf#bottles',
    'Its kind, its unit and its product stay as they are: what was booked on it would no longer be true. Add another.',
  ),
  'shelf.holds-more': standing('shelf#bottles', 'It holds {held} mL now, so it cannot be one for {room} mL.'),
  'shelf.goes-when-empty': standing('shelf#bottles', 'It is not empty. Empty it first; then it can go.'),
  // Pouring
  'shelf.into-itself': unusable('shelf#bottles', 'A bottle is not poured into itself.'),
  'shelf.mix-it-first': unusable(
    'shelf#mix',
    '{name} is poured into a bottle by a mix, so that what is in the bottle has a lot.',
  ),
  'shelf.named-twice': unusable(
    'shelf#mix',
    'One bottle or package is named twice. Name each once, with its whole amount.',
  ),
  // When
  'shelf.in-future': unusable('shelf#corrections', '{at} has not come yet. Say when it happened.'),
  'shelf.before-last': unusable(
    'shelf#corrections',
    'The last entry of this bottle is of {last}; this one cannot be earlier.',
  ),
  'shelf.taken-back-before': standing('shelf#corrections', 'This entry was taken back before.'),
  'shelf.no-taking-back-twice': standing(
    'shelf#corrections',
    'Taking back is not itself taken back. Enter what happened once more.',
  ),
  'shelf.lot-unknown': registered(
    404,
    66,
    'shelf#bottles',
    'There is no lot {code} on this bench. Read its label again.',
  ),
  // Tests
  'shelf.test-of-other-role': unusable('shelf#tests', 'A {test} test is of a {wanted}; {name} holds a {role}.'),
  'shelf.station-of-fixers': unusable('shelf#tests', 'Only fixing baths stand first and second; {name} holds none.'),
  'shelf.no-count': unusable(
    'shelf#left',
    'Nothing says how much film {name} carries. Put the rolls a litre from its label into the product.',
  ),
  // Waste
  'shelf.which-jug': unusable('shelf#waste', 'Say which jug it went into.'),
  'shelf.into-a-jug-only': unusable(
    'shelf#waste',
    '{product} goes into a jug and is handed over: it holds silver or poison. It never goes down a drain from here.',
  ),
  'shelf.no-powder-into-jug': unusable('shelf#waste', '{product} is a powder; hand it over in its package.'),
  'shelf.never-together': standing(
    'shelf#waste',
    '{name} holds spent {role}. {product} never goes to it: together they make {makes}. Take another jug.',
  ),
  // Products
  'product.not-of-this-role': unusable('shelf#products', 'A {role} has no {what}. Change its role, or leave that out.'),
  'product.replenished-only': unusable('shelf#products', 'Only a replenished bath has replenisher; this one is {use}.'),
} as const
