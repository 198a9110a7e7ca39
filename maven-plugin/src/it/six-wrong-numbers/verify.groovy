// expected.txt is what an engineer sees, line by line and in this order
def log = new File(basedir, 'build.log').readLines('UTF-8').collect { it.replaceFirst(/^\[ERROR\] /, '') }
def at = 0
new File(basedir, 'expected.txt').readLines('UTF-8').findAll { !it.isBlank() }.each { line ->
    def next = (at..<log.size()).find { log[it] == line }
    assert next != null : "missing after line ${at} of the log: ${line}"
    at = next + 1
}
assert log.any { it.contains('6 errors, 3 bars to release; nothing was written') }
assert !new File(basedir, 'target/cellfile/six-wrong-numbers').exists()
def findings = new groovy.json.JsonSlurper().parse(new File(basedir, 'target/cellfile/findings.json'))
assert findings.verdict == 'refused'
def (unsigned, wrong) = findings.findings.split { it.id == 'sign-off.missing' }
assert unsigned.size() == 3 // a cell that is refused cannot be signed
assert wrong.size() == 6
