def log = new File(basedir, 'build.log').getText('UTF-8')
assert log.contains('derived values: ') && log.contains('the same in the embedded dossier')
assert log.contains('consistent in itself, origin unproven')
assert log.contains('[audit.not-ours]')
def sources = new File(basedir, 'target/sources')
def cell = new File(basedir, '../agreeing-numbers/src/main/cell')
assert sources.list() as Set == cell.list() as Set
assert new File(sources, 'cell.yaml').bytes == new File(cell, 'cell.yaml').bytes
