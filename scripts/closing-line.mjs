/** A reporter that ends the run with one plain line, "N passed, N failed", for people and scripts that read only the end. */
export default class ClosingLine {
  onTestRunEnd(modules) {
    let passed = 0
    let failed = 0
    let skipped = 0
    for (const module of modules) {
      for (const test of module.children.allTests()) {
        const state = test.result().state
        if (state === 'passed') passed++
        else if (state === 'failed') failed++
        else skipped++
      }
      if (module.errors().length > 0) failed++
    }
    const tail = skipped > 0 ? `, ${skipped} skipped` : ''
    process.stdout.write(`\n${passed} passed, ${failed} failed${tail}\n`)
  }
}
