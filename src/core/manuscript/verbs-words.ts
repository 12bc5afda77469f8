// Closed classes of English as cookery writers use it: what may stand around a verb.

const set = (words: string): ReadonlySet<string> => new Set(words.split(' '))

export const determiners = set(
  'the a an your my our their its his her this that these those each every both all any some half another no enough ' +
    'remaining either whatever plenty more most few little several enough sufficient some one two three four five six seven eight nine ten twelve',
)
export const prepositions = set(
  'of in into on onto with to from at by for over under through thru around about off out between among against across ' +
    'along before after during without within w/ w/o upon inside beneath beside besides per down up above below till until than as except excluding including',
)
export const pronouns = set(
  'it them they you he she we i this these those everything one ones yourself each all both some',
)
export const auxiliaries = set(
  "is are was were be been being has have had do does did will would can could should may might must shall don't doesn't can't cannot " +
    "won't isn't aren't shouldn't never not",
)
/** Adverbs and link words that may stand before an order without changing that it is one. */
export const leadAdverbs = set(
  'now next first second finally lastly meanwhile gently slowly carefully immediately quickly also again just lightly well gradually ' +
    'thoroughly evenly roughly finely coarsely thinly constantly simply please afterwards thereafter afterward generously briefly firmly tightly ' +
    'occasionally frequently vigorously briskly alternatively optionally instead once still either slightly so secondly ' +
    'thirdly okay ok right yes always even perhaps maybe cautiously swiftly partially partly very',
)
/** Words that say how or how long, behind a verb. */
export const looseAdverbs = set(
  'longer hard aside apart together halfway throughout undisturbed twice once thrice covered uncovered round away straight down open shut back specified',
)
export const conjunctions = set('and or then but & + plus nor')
/** Words that open a clause with its own subject, or a time clause: verbs inside are told, not ordered. */
export const subordinators = set(
  'until till untill when while whilst if once as because since unless where whether so which that who whose after before although though',
)
/** Marks after which a new order may begin. */
export const strongMarks = set('! ? ; : — -> • ( | …')

export const isDeterminer = (low: string): boolean => determiners.has(low)
