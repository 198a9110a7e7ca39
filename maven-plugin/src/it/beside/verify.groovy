def log = new File(basedir, 'build.log').getText('UTF-8')
assert log.contains('ISO 13855:2024 beside ISO 13855:2010')
assert log.contains('cannot be said: ')
assert log.contains('still holds')
