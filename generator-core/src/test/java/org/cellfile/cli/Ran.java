package org.cellfile.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.stream.Stream;

/**
 * What a verb said.
 *
 * @param code its exit code
 */
record Ran(int code, String out, String err) {

    /** Runs the program with these arguments, as text. */
    static Ran run(Object... arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int code = Main.run(
                new PrintWriter(out, true),
                new PrintWriter(err, true),
                Stream.of(arguments).map(Object::toString).toArray(String[]::new));
        return new Ran(code, out.toString(), err.toString());
    }
}
