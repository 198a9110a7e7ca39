package org.cellfile.source;

import java.util.Optional;
import java.util.function.Function;

/** What somebody wrote, or should have written. Never a default, never zero for "nothing". */
public sealed interface Stated<T> {

    /** Where it was written, or the section in which it was due. */
    Span where();

    /** The value, if one was written and could be read. */
    Optional<T> value();

    /** The characters as written; the key's name when it is missing. */
    String characters();

    /** The same statement read further; a statement that is missing stays so. */
    <U> Stated<U> map(Function<T, U> further);

    /** Written in a file. */
    record Written<T>(T content, Span where, String characters) implements Stated<T> {
        @Override
        public Optional<T> value() {
            return Optional.of(content);
        }

        @Override
        public <U> Stated<U> map(Function<T, U> further) {
            return new Written<>(further.apply(content), where, characters);
        }
    }

    /**
     * Not written, or written so that it could not be read (which was reported where it was found).
     *
     * @param where the section it was due in, or the unreadable characters
     * @param characters the key it was due under
     */
    record Missing<T>(Span where, String characters) implements Stated<T> {
        @Override
        public Optional<T> value() {
            return Optional.empty();
        }

        @Override
        public <U> Stated<U> map(Function<T, U> further) {
            return new Missing<>(where, characters);
        }
    }
}
