def log = new File(basedir, 'build.log').getText('UTF-8')
assert log.contains('`automatic-operation-en` of `agreeing-numbers`: current')
assert log.contains('`automatic-operation-en` of `agreeing-numbers`: outdated')
assert log.contains('what differs: Starting')
assert log.contains('exchange it at operator panel beside the press')
assert log.contains('`0000 0000 0000`: unknown')
assert log.contains('no sheet of this description has this short digest')
assert log.count('Not every sheet that was read is current.') >= 2
assert !log.contains('Exception in thread') && !log.contains('defect in the generator')
