package org.cellfile.audit;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * Splits the contents of a page into instructions (ISO 32000-2, 7.8.2): operands, then the operator. Numbers are passed over, as
 * nobody here asks where on the page something stands.
 */
final class ContentScanner {

    /** What is told of each instruction. Operands are names (String), strings (byte[]), lists of these, and {@link Properties}. */
    interface Receiver {
        void operator(String operator, List<Object> operands) throws IOException, Refusal;
    }

    /** A dictionary in the midst of instructions, as it is written between its brackets. */
    record Properties(String written) {}

    private static final String BROKEN = "the contents of a page are broken";

    private final byte[] bytes;
    private int at;

    ContentScanner(byte[] bytes) {
        this.bytes = bytes;
    }

    void scan(Receiver receiver) throws IOException, Refusal {
        List<Object> operands = new ArrayList<>();
        List<Object> list = null;
        while (true) {
            space();
            if (at >= bytes.length) {
                return;
            }
            Object operand = null;
            switch (bytes[at]) {
                case '/' -> {
                    at++;
                    operand = word();
                }
                case '(' -> operand = text();
                case '<' -> operand = at + 1 < bytes.length && bytes[at + 1] == '<' ? properties() : digits();
                case '[' -> {
                    at++;
                    list = new ArrayList<>();
                }
                case ']' -> {
                    at++;
                    operand = list;
                    list = null;
                }
                default -> {
                    int from = at;
                    String word = word();
                    if (at == from) {
                        throw new IOException(BROKEN);
                    }
                    if (!isNumber(word)) {
                        receiver.operator(word, operands);
                        operands.clear();
                    }
                }
            }
            if (operand != null) {
                (list == null ? operands : list).add(operand);
            }
        }
    }

    private static boolean isNumber(String word) {
        char first = word.charAt(0);
        return (first >= '0' && first <= '9') || first == '-' || first == '.' || first == '+';
    }

    private void space() {
        while (at < bytes.length) {
            if (bytes[at] == '%') {
                while (at < bytes.length && bytes[at] != '\n' && bytes[at] != '\r') {
                    at++;
                }
            } else if (isSpace(bytes[at])) {
                at++;
            } else {
                return;
            }
        }
    }

    private static boolean isSpace(byte one) {
        return one == ' ' || one == '\n' || one == '\r' || one == '\t' || one == '\f' || one == 0;
    }

    private String word() {
        int from = at;
        while (at < bytes.length && !isSpace(bytes[at]) && "()<>[]{}/%".indexOf(bytes[at]) < 0) {
            at++;
        }
        return new String(bytes, from, at - from, StandardCharsets.ISO_8859_1);
    }

    private Properties properties() throws IOException {
        int from = at + 2;
        int depth = 0;
        while (at + 1 < bytes.length) {
            if (bytes[at] == '<' && bytes[at + 1] == '<') {
                depth++;
                at += 2;
            } else if (bytes[at] == '>' && bytes[at + 1] == '>') {
                depth--;
                at += 2;
                if (depth == 0) {
                    return new Properties(new String(bytes, from, at - 2 - from, StandardCharsets.ISO_8859_1).strip());
                }
            } else {
                at++;
            }
        }
        throw new IOException(BROKEN);
    }

    private byte[] digits() throws IOException {
        at++;
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        int half = -1;
        while (at < bytes.length && bytes[at] != '>') {
            if (!isSpace(bytes[at])) {
                int digit = Character.digit(bytes[at], 16);
                if (digit < 0) {
                    throw new IOException(BROKEN);
                }
                if (half < 0) {
                    half = digit;
                } else {
                    out.write((half << 4) | digit);
                    half = -1;
                }
            }
            at++;
        }
        at++;
        if (half >= 0) {
            out.write(half << 4);
        }
        return out.toByteArray();
    }

    private byte[] text() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        int depth = 1;
        at++;
        while (at < bytes.length) {
            byte one = bytes[at++];
            if (one == '\\') {
                escaped(out);
            } else if (one == ')' && --depth == 0) {
                return out.toByteArray();
            } else if (one == '\r') {
                if (at < bytes.length && bytes[at] == '\n') {
                    at++;
                }
                out.write('\n');
            } else {
                depth += one == '(' ? 1 : 0;
                out.write(one);
            }
        }
        throw new IOException(BROKEN);
    }

    private void escaped(ByteArrayOutputStream out) {
        if (at >= bytes.length) {
            return;
        }
        byte one = bytes[at++];
        switch (one) {
            case 'n' -> out.write('\n');
            case 'r' -> out.write('\r');
            case 't' -> out.write('\t');
            case 'b' -> out.write('\b');
            case 'f' -> out.write('\f');
            case '\n' -> {}
            case '\r' -> at += at < bytes.length && bytes[at] == '\n' ? 1 : 0;
            default -> {
                if (one < '0' || one > '7') {
                    out.write(one);
                    return;
                }
                int code = one - '0';
                for (int i = 0; i < 2 && at < bytes.length && bytes[at] >= '0' && bytes[at] <= '7'; i++) {
                    code = code * 8 + bytes[at++] - '0';
                }
                out.write(code);
            }
        }
    }
}
