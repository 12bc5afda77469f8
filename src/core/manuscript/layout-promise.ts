// Lines at the head of a recipe that promise a yield or a time.

const label =
  /^(?:serves|servings?|serving size|portions?|yields?|makes|feeds|quantity|prep(?:aration)?(?: time)?|cook(?:ing)?(?: time)?|bak(?:e|ing)(?: time)?|total(?: time)?|active(?: time)?|hands[- ]on(?: time)?|inactive(?: time)?|time|times|ready in|takes|start to finish|on the table in|enough for|sufficient for|resting(?: time)?|soak(?:ing)? time|marinat(?:e|ing) time|difficulty|level|cuisine|course|category|author|cost|calories|per serving)\b/i
/** Behind a label that is an order as well only a time makes it a label ("Cook 45 minutes", "Cook 500 g rice"). */
const timeFollows =
  /^\W*(?:about |approx\.? |around |~ ?|at least |under |up to )?[\d¼½¾⅓⅔][\d\s/¼½¾⅓⅔.,–-]*(?:to \d+ )?(?:min|mins|minutes?|h|hr|hrs|hours?)\b/i
const amountOfPeople =
  /^(?:about |approx(?:imately|\.)? |around |~ ?)?(?:\d+|one|two|four|six|eight|ten|twelve)(?:\s*(?:-|–|to|or)\s*\d+)?\s+(?:generous |large |small |hearty |big |main |side )?(?:servings?|portions?|people|persons|px|pax|ptn|covers|diners)\b/i
const length =
  /^(?:about |approx(?:imately|\.)? |around |just |under |~ ?)?\d[\d\s/¼½¾⅓⅔–-]*(?:to \d+ )?(?:minutes?|mins?|hours?|hrs?)\b(?!\s+(?:before|ahead|later|after|more|then))/i

const batch = /^\d+\s+batch(?:es)?\s*(?:=|:|-)/i
const forPeople = /^for \d+(?:\s*(?:-|–|to|or)\s*\d+)?(?: people| persons)?\.?$/i

/** Does the line promise a yield or a time, rather than tell what to do? */
export function isPromise(words: string): boolean {
  return words.length <= 160 && words.split(/\s*[|•·]\s*|\s+\/\s+|[ ]{3,}/).some(promises)
}

function promises(words: string): boolean {
  const head = words.replace(/^[^\p{L}\d~]+/u, '')
  const found = label.exec(head)
  if (found) {
    const rest = head.slice(found[0].length).trimStart()
    // "Cook the beef", "Time it well", "Prepare": the label must lead to a figure or a colon.
    if (/^(?:prep|cook|bake|active)$/i.test(found[0]) && !/^[:=–—-]/.test(rest)) return timeFollows.test(rest)
    return /^(?:[:=,–—.-]|about|approx|around|abt|under|up to|at least|\d|¼|½|¾|~|one|two|three|four|six|eight|ten|twelve|a |an |half|overnight|for \d|in \d)/i.test(
      rest,
    )
  }
  if (words.length <= 60 && /\b(?:yields?|makes|serves)\s+(?:about |approx\.? )?\d/i.test(head)) return true
  return (
    batch.test(head) || forPeople.test(head) || amountOfPeople.test(head) || (length.test(head) && head.length <= 60)
  )
}
