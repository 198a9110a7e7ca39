package org.cellfile.subject.signoff;

import java.util.List;
import java.util.Optional;
import org.cellfile.read.Section;
import org.cellfile.source.SourceFile;
import org.cellfile.source.Span;

/**
 * What was stated about signing.
 *
 * @param asked beyond what is asked for everywhere
 * @param signed in the order written
 * @param kept texts of what was signed
 * @param where the key under which sign-offs stand; empty when there is none
 */
public record SignOffs(
        List<SigningKey> keys, List<AskedSignOff> asked, List<SignOff> signed, KeptTexts kept, Optional<Span> where) {

    /** The key under which sign-offs stand. */
    public static final String KEY = "sign-offs";

    /**
     * Reads them.
     *
     * @param files of the cell, the kept texts among them
     */
    public static SignOffs read(Section top, List<SourceFile> files) {
        return new SignOffs(
                Section.each(top.listIfStated("keys"), SigningKey::read),
                Section.each(top.listIfStated("sign-off-policy"), AskedSignOff::read),
                Section.each(top.listIfStated(KEY), SignOff::read),
                KeptTexts.of(files),
                top.has(KEY) ? Optional.of(top.where(KEY)) : Optional.empty());
    }

    /** The key with that tag. */
    Optional<SigningKey> key(String tag) {
        return keys.stream()
                .filter(key -> key.tag().value().filter(tag::equals).isPresent())
                .findFirst();
    }
}
