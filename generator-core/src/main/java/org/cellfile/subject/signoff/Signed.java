package org.cellfile.subject.signoff;

import java.util.List;

/**
 * A sign-off and what it is worth.
 *
 * @param proven true when its signature holds under the key named
 * @param since what changed since it was signed, a sentence without full stop each; empty unless it is superseded
 */
public record Signed(SignOff signOff, SignOffStatus status, boolean proven, List<String> since) {}
