package org.cellfile.subject.signoff;

import java.util.List;
import org.cellfile.read.Section;

/**
 * What was stated about signing.
 *
 * @param asked beyond what is asked for everywhere
 * @param signed in the order written
 */
public record SignOffs(List<SigningKey> keys, List<AskedSignOff> asked, List<SignOff> signed) {

    public static SignOffs read(Section top) {
        return new SignOffs(
                Section.each(top.listIfStated("keys"), SigningKey::read),
                Section.each(top.listIfStated("sign-off-policy"), AskedSignOff::read),
                Section.each(top.listIfStated("sign-offs"), SignOff::read));
    }
}
