// Imported first, and importing nothing itself, so that an old Node gets as far as the sentence.
const needed = [20, 19]

/** Whether this version of Node will do: 20.19 or newer. */
export function newEnough(version) {
  const [major, minor] = version.replace(/^v/, '').split('.').map(Number)
  return major > needed[0] || (major === needed[0] && minor >= needed[1])
}

if (!newEnough(process.version)) {
  console.error(
    `Underlid needs Node ${needed.join('.')} or newer; this is ${process.version}. Install a newer Node, then try again.`,
  )
  process.exit(2)
}
