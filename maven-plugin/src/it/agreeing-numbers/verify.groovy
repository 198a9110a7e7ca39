def set = new File(basedir, 'target/cellfile/agreeing-numbers')
assert new File(set, 'agreeing-numbers-safety-file.pdf').length() > 20000
assert new File(set, 'agreeing-numbers-due-dates.ics').getText('UTF-8').startsWith('BEGIN:VCALENDAR\r\n')
assert new File(set, 'sheets/automatic-operation-en.pdf').length() > 5000
['shift-check', 'yearly-inspection', 'stop-time-measurement'].each { form ->
    assert new File(set, "forms/${form}.pdf").length() > 5000
}
def log = new File(basedir, 'build.log').getText('UTF-8')
assert log.contains('every recomputed value agrees with the recorded one')
assert log.contains('written: ') && log.contains('agreeing-numbers-safety-file.pdf')
// the default phases: check in validate, generate in package
assert log.indexOf(':check') < log.indexOf(':generate')
// signed by three people, one after the other
def signed = new File(basedir, 'src/main/cell/sign-offs.yaml').readLines('UTF-8').findAll { it.contains('words: ') }*.trim()
assert signed == ['words: tested', 'words: checked', 'words: released for use']
assert new File(basedir, 'src/main/cell/signed').list().length == 1
assert log.contains('signed: `released for use` by `pellam`, typed, not proven; every recomputed value agrees')
