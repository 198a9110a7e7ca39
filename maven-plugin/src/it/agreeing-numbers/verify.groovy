def set = new File(basedir, 'target/cellfile/agreeing-numbers')
assert new File(set, 'agreeing-numbers-safety-file.pdf').length() > 20000
assert new File(set, 'agreeing-numbers-due-dates.ics').getText('UTF-8').startsWith('BEGIN:VCALENDAR\r\n')
assert new File(set, 'sheets/automatic-operation.pdf').length() > 5000
['shift-check', 'yearly-inspection', 'stop-time-measurement'].each { form ->
    assert new File(set, "forms/${form}.pdf").length() > 5000
}
def log = new File(basedir, 'build.log').getText('UTF-8')
assert log.contains('every recomputed value agrees with the recorded one')
assert log.contains('written: ') && log.contains('agreeing-numbers-safety-file.pdf')
// the default phases: check in validate, generate in package
assert log.indexOf(':check') < log.indexOf(':generate')
