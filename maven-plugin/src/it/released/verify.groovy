import org.apache.pdfbox.Loader
import org.apache.pdfbox.text.PDFTextStripper

assert !new File(basedir, 'target').exists()
def installed = new File(localRepositoryPath, 'org/cellfile/it/released/1/released-1-safety-file.pdf')
assert installed.isFile()
Loader.loadPDF(installed).withCloseable { pdf ->
    def text = new PDFTextStripper().getText(pdf)
    assert text.contains('Released, as of 2026-11-13')
    assert text.contains('page 1 of')
    assert !text.contains('DRAFT')
}
def log = new File(basedir, 'build.log').getText('UTF-8')
assert log.contains('nothing bars release; these pages are a release')
