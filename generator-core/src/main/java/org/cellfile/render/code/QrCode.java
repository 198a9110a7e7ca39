package org.cellfile.render.code;

import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import java.nio.charset.StandardCharsets;
import java.util.Map;

/**
 * A text as a QR code (ISO/IEC 18004), with a level of error correction that takes a scratch or a splash of oil: up to about 15 %
 * (level M, from memory).
 *
 * @param size modules along one side, with the light margin around it
 * @param dark the dark modules as the data of an SVG path in a square of that size
 */
public record QrCode(int size, String dark) {

    /** Light modules on each side that a reader needs; ISO/IEC 18004 asks for four (from memory). */
    private static final int MARGIN = 4;

    /** The code of a text of up to some hundred characters. */
    public static QrCode of(String text) {
        ByteMatrix modules = modules(text);
        StringBuilder dark = new StringBuilder();
        for (int y = 0; y < modules.getHeight(); y++) {
            int x = 0;
            while (x < modules.getWidth()) {
                int from = x;
                while (x < modules.getWidth() && modules.get(x, y) == 1) {
                    x++;
                }
                if (x > from) {
                    dark.append('M').append(from + MARGIN).append(' ').append(y + MARGIN);
                    dark.append('h')
                            .append(x - from)
                            .append("v1h")
                            .append(from - x)
                            .append('z');
                }
                x++;
            }
        }
        return new QrCode(modules.getWidth() + 2 * MARGIN, dark.toString());
    }

    private static ByteMatrix modules(String text) {
        // Some readers stumble over the mark for a character set, and plain letters need none.
        boolean plain = StandardCharsets.US_ASCII.newEncoder().canEncode(text);
        try {
            return Encoder.encode(
                            text,
                            ErrorCorrectionLevel.M,
                            plain ? Map.of() : Map.of(EncodeHintType.CHARACTER_SET, StandardCharsets.UTF_8.name()))
                    .getMatrix();
        } catch (WriterException tooLong) {
            throw new IllegalArgumentException(tooLong);
        }
    }
}
