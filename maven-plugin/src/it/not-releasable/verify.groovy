def log = new File(basedir, 'build.log').getText('UTF-8')
// the check before it only tells what bars release
assert log.contains('12 bars to release; this can be printed as a draft only')
assert log.contains('[ERROR] cell.yaml:5:3: error: no function test of this cell is recorded [test.missing]')
assert log.contains('12 errors; the release was refused, and nothing was written; a draft can be printed by not asking for a release')
assert !new File(basedir, 'target/cellfile/marrowdale-refit').exists()
assert new groovy.json.JsonSlurper().parse(new File(basedir, 'target/cellfile/findings.json')).verdict == 'refused'
