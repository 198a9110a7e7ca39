package org.cellfile.subject.signoff;

import java.time.LocalDate;
import org.cellfile.read.Section;
import org.cellfile.source.Stated;
import org.cellfile.subject.identity.Person;

/**
 * A key that proves who signed. The half that signs is kept by the person alone and never stated.
 *
 * @param of whose it is
 * @param publicKey an Ed25519 public key as PEM files hold it between their two lines (SubjectPublicKeyInfo of RFC 8410 in Base64)
 * @param from the first day on which it counts
 * @param withdrawn the first day on which it no longer counts; missing while it does
 */
public record SigningKey(
        Stated<String> tag,
        Stated<String> of,
        Stated<String> publicKey,
        Stated<LocalDate> from,
        Stated<LocalDate> withdrawn) {

    public static final String SORT = "key";

    static SigningKey read(Section section) {
        Stated<LocalDate> from = section.date("from");
        return new SigningKey(
                section.tag(SORT),
                section.reference("of", Person.SORT),
                section.text("public"),
                from,
                section.inOrder("from", from, "withdrawn", section.dateIfStated("withdrawn")));
    }

    /** True when it counts on that day. Open where something could not be read. */
    public boolean countsOn(LocalDate day) {
        return from.value().filter(day::isBefore).isEmpty()
                && withdrawn.value().filter(end -> !day.isBefore(end)).isEmpty();
    }
}
