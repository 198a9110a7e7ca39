package org.cellfile.cell;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.cellfile.dossier.Block;
import org.cellfile.dossier.Block.Box;
import org.cellfile.dossier.Block.Column;
import org.cellfile.dossier.Block.Paragraph;
import org.cellfile.dossier.Block.Section;
import org.cellfile.dossier.Block.Table;
import org.cellfile.dossier.Block.Tone;
import org.cellfile.dossier.Chapter;
import org.cellfile.dossier.Statement;
import org.cellfile.subject.signoff.InternalPart;

/** What a copy from which parts were left out says about that: it is told from the copy alone. */
final class CopyNotes {

    private CopyNotes() {}

    /** The chapters, with what was left out said where it was, where people sign, and in full where the sources are listed. */
    static List<Chapter> in(List<Chapter> chapters, Cell cell) {
        return cell.copies().isCopy()
                ? chapters.stream()
                        .map(chapter -> noted(chapter, chapters, cell))
                        .toList()
                : chapters;
    }

    private static Chapter noted(Chapter chapter, List<Chapter> all, Cell cell) {
        List<Block> blocks = new ArrayList<>(chapter.blocks());
        if (cell.copies().carried().containsKey(chapter.id())) {
            blocks.add(0, note("Not everything stands in this copy", inChapter(chapter, cell)));
        }
        if (chapter.id().equals("signatures")) {
            blocks.add(
                    0,
                    note(
                            "What was signed is more than this copy holds",
                            "Sign-offs cover the full description, which the plant keeps. The digests of the chapters "
                                    + titles(all, cell)
                                    + " are taken over from it and cannot be recomputed from this copy."));
        }
        if (chapter.id().equals("sources")) {
            blocks.add(new Section("", "What is left out of this copy", leftOut(all, cell)));
        }
        return new Chapter(chapter.id(), chapter.title(), blocks);
    }

    private static Box note(String title, String text) {
        return new Box(Tone.NOTE, title, List.of(new Paragraph(text)));
    }

    private static String inChapter(Chapter chapter, Cell cell) {
        return "Left out, because it is internal to the plant: "
                + InternalPart.of(cell.copies()).stream()
                        .filter(part -> leftOut(part, cell).stream()
                                .anyMatch(statement -> Substances.chapter(statement.key())
                                        .filter(chapter.id()::equals)
                                        .isPresent()))
                        .map(CopyNotes::words)
                        .collect(Collectors.joining("; "))
                + ". The plant keeps a full copy.";
    }

    private static List<Block> leftOut(List<Chapter> all, Cell cell) {
        Map<String, String> carried = cell.copies().carried();
        return List.of(
                new Paragraph(
                        "These files are a copy from which the internal parts and all comments were taken. The same words"
                                + " stand in the place of each value of a kind listed here, in the files and on the pages. Nothing is"
                                + " computed from what was left out. The plant keeps the full description."),
                new Table(
                        "What was left out",
                        List.of(
                                Column.text("What", 5),
                                Column.text("Where in the files", 5),
                                Column.figures("Values", 2)),
                        InternalPart.of(cell.copies()).stream()
                                .filter(part -> !leftOut(part, cell).isEmpty())
                                .map(part -> List.of(
                                        words(part),
                                        part.path(),
                                        String.valueOf(leftOut(part, cell).size())))
                                .toList()),
                new Paragraph(
                        "The digests of these chapters are those of the full description. From this copy nobody can recompute"
                                + " them, nor see from them that the rest of the chapter is as it was signed."),
                new Table(
                        "Chapters that cannot be recomputed whole from this copy",
                        List.of(Column.text("Chapter", 4), Column.text("SHA-256 of its substance", 8)),
                        carried.entrySet().stream()
                                .map(entry -> List.of(title(entry.getKey(), all), entry.getValue()))
                                .toList()));
    }

    private static String words(InternalPart part) {
        return part.what().isEmpty() ? "what the plant marked as internal under " + part.path() : part.what();
    }

    private static List<Statement> leftOut(InternalPart part, Cell cell) {
        return cell.statements().stream()
                .filter(statement -> part.holds(statement) && InternalPart.isLeftOut(statement))
                .toList();
    }

    private static String titles(List<Chapter> all, Cell cell) {
        return cell.copies().carried().keySet().stream()
                .map(chapter -> "\"" + title(chapter, all) + "\"")
                .collect(Collectors.joining(" and "));
    }

    private static String title(String id, List<Chapter> all) {
        return all.stream()
                .filter(chapter -> chapter.id().equals(id))
                .map(Chapter::title)
                .findFirst()
                .orElse(id);
    }
}
