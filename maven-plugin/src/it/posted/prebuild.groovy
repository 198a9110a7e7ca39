import org.cellfile.FolderWorld
import org.cellfile.Generator
import org.cellfile.cell.Composition
import org.cellfile.dossier.SheetCode

/** The text in the code of the sheet, as a camera reads it at the machine. */
String read(File cell) {
    def dossier = Composition.compose(new Generator().undated(FolderWorld.of(cell.toPath())).cell().get())
    def sheet = dossier.sheets().find { it.id() == 'automatic-operation' }
    SheetCode.of(sheet, dossier.label(), false).text()
}

def store(String name, File cell, String read) {
    def properties = new Properties()
    properties.setProperty('cellfile.cell', cell.path)
    properties.setProperty('cellfile.read', read)
    properties.setProperty('cellfile.day', '2026-11-13')
    new File(basedir, name).withOutputStream { properties.store(it, null) }
}

def cell = new File(basedir, '../agreeing-numbers/src/main/cell').canonicalFile
def code = read(cell)
store('current.properties', cell, code)
store('unknown.properties', cell, '0000 0000 0000')

def changed = new File(basedir, 'src/main/cell')
cell.eachFileRecurse { file ->
    if (file.isFile()) {
        def copy = new File(changed, cell.toPath().relativize(file.toPath()).toString())
        copy.parentFile.mkdirs()
        copy.bytes = file.bytes
    }
}
def sheets = new File(changed, 'sheets.yaml')
def before = sheets.getText('UTF-8')
assert before.contains('Press the white start button.')
sheets.setText(before.replace('Press the white start button.', 'Press the grey start button.'), 'UTF-8')
store('outdated.properties', changed, code)
return true
