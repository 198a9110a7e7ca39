def log = new File(basedir, 'build.log').getText('UTF-8')
assert log.contains('# claim.not-equal')
assert log.contains('curtain-trolley.separation-distance: separation distance')
assert log.contains('recomputed, agrees with the recorded value')
