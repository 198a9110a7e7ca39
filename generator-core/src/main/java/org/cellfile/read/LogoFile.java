package org.cellfile.read;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.MemoryCacheImageInputStream;
import org.cellfile.dossier.Logo;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.finding.Findings;

/**
 * The file of a logo, which comes from outside and is opened with care. What sort of picture it is tell its first bytes, not its
 * name. Points are decoded and written anew, shapes are copied one by one: nothing else of the file gets onto a page.
 *
 * @param content the bytes as they were read
 * @param logo what of it is drawn
 */
@SuppressWarnings("ArrayRecordComponent") // Carried from reader to writer; nobody compares two of these.
public record LogoFile(String path, String mediaType, byte[] content, Logo logo) {

    /** The file is no picture of a sort that can be printed, or a broken one. */
    static final FindingId NOT_A_PICTURE = new FindingId("logo.not-a-picture");

    /** It holds more bytes, points or shapes than are read. */
    static final FindingId TOO_LARGE = new FindingId("logo.too-large");

    /** It holds something else than shapes in flat colours: code, addresses, letters. */
    static final FindingId NOT_PLAIN = new FindingId("logo.not-plain");

    private static final int MOST_POINTS = 3000;

    /** How many times as long as wide it may be, so that something of it is seen; constructed. */
    private static final int LONGEST = 20;

    private static final byte[] PNG = {(byte) 0x89, 'P', 'N', 'G'};
    private static final byte[] JPEG = {(byte) 0xff, (byte) 0xd8, (byte) 0xff};

    /** What of a file can be printed; why it cannot is reported. */
    static Optional<LogoFile> of(NamedFile file, Findings findings) {
        try {
            return file.bytes().isEmpty()
                    ? Optional.empty()
                    : Optional.of(of(file.path().characters(), file.bytes().get()));
        } catch (NotALogo refused) {
            findings.add(Finding.refuses(refused.id, "", file.path().where(), refused.sentence, refused.help));
            return Optional.empty();
        }
    }

    /** Why a file is not taken. */
    static final class NotALogo extends Exception {
        private static final long serialVersionUID = 1L;

        private final transient FindingId id;
        private final String sentence;
        private final String help;

        NotALogo(FindingId id, String sentence, String help) {
            super(sentence);
            this.id = id;
            this.sentence = sentence;
            this.help = help;
        }
    }

    private static LogoFile of(String path, byte[] bytes) throws NotALogo {
        if (begins(bytes, PNG)) {
            return new LogoFile(path, "image/png", bytes, points(path, bytes, "png"));
        }
        if (begins(bytes, JPEG)) {
            return new LogoFile(path, "image/jpeg", bytes, points(path, bytes, "jpeg"));
        }
        return new LogoFile(path, "image/svg+xml", bytes, PlainShapes.of(path, bytes));
    }

    private static boolean begins(byte[] bytes, byte[] with) {
        return bytes.length > with.length && Arrays.equals(bytes, 0, with.length, with, 0, with.length);
    }

    private static Logo points(String path, byte[] bytes, String format) throws NotALogo {
        ImageReader reader = ImageIO.getImageReadersByFormatName(format).next();
        try (ImageInputStream stream = new MemoryCacheImageInputStream(new ByteArrayInputStream(bytes))) {
            reader.setInput(stream, true, true);
            int width = reader.getWidth(0);
            int height = reader.getHeight(0);
            if (width > MOST_POINTS || height > MOST_POINTS) {
                throw new NotALogo(
                        TOO_LARGE,
                        "the logo `" + path + "` is " + width + " by " + height + " points large, and at most "
                                + MOST_POINTS + " each way are read",
                        "save it smaller: it is printed 7 mm high at most");
            }
            boxed(path, new BigDecimal(width), new BigDecimal(height));
            List<String> warnings = new ArrayList<>();
            reader.addIIOReadWarningListener((source, warning) -> warnings.add(warning));
            BufferedImage picture = reader.read(0);
            if (!warnings.isEmpty()) { // one that ends early is filled up with grey
                throw new IOException(warnings.get(0));
            }
            return new Logo("", onWhite(picture), "0 0 " + width + " " + height);
        } catch (IOException | RuntimeException broken) { // its decoders throw either at what they do not expect
            throw new NotALogo(
                    NOT_A_PICTURE,
                    "the logo `" + path + "` begins as a picture and cannot be read as one",
                    "open it in a drawing program and save it anew, as PNG, as JPEG in red, green and blue, or as SVG");
        } finally {
            reader.dispose();
        }
    }

    /** Refuses one that would be printed as a line. */
    static void boxed(String path, BigDecimal width, BigDecimal height) throws NotALogo {
        BigDecimal most = new BigDecimal(LONGEST);
        if (width.compareTo(height.multiply(most)) > 0 || height.compareTo(width.multiply(most)) > 0) {
            throw new NotALogo(
                    NOT_A_PICTURE,
                    "the logo `" + path + "` is " + width.toPlainString() + " wide and " + height.toPlainString()
                            + " high, and would be printed as a line: one side is more than " + LONGEST
                            + " times as long as the other",
                    "save the mark alone, without the empty space beside it");
        }
    }

    /** What can be seen through stands on the white of the page. */
    private static String onWhite(BufferedImage picture) throws IOException {
        BufferedImage opaque = new BufferedImage(picture.getWidth(), picture.getHeight(), BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = opaque.createGraphics();
        graphics.drawImage(picture, 0, 0, Color.WHITE, null);
        graphics.dispose();
        ByteArrayOutputStream png = new ByteArrayOutputStream();
        ImageIO.write(opaque, "png", png);
        return Base64.getEncoder().encodeToString(png.toByteArray());
    }
}
