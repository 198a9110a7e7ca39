package org.cellfile.subject.signoff;

import java.security.PublicKey;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.cellfile.dossier.Statement;
import org.cellfile.dossier.Substance;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.source.Stated;
import org.cellfile.subject.identity.Identity;

/** Whether signatures prove who signed: with keys that are what they are said to be, of who signed, and in force on that day. */
final class Proof {

    /** A key without a signature, or a signature without a key. */
    static final FindingId HALF = new FindingId("sign-off.key-without-signature");

    static final FindingId FOREIGN_KEY = new FindingId("sign-off.foreign-key");
    static final FindingId NOT_IN_FORCE = new FindingId("sign-off.key-not-in-force");
    static final FindingId DOES_NOT_HOLD = new FindingId("sign-off.signature-does-not-hold");
    static final FindingId NO_PUBLIC_KEY = new FindingId("key.no-public-key");
    static final FindingId OF_TWO = new FindingId("key.of-two-people");

    private final SignOffs stated;
    private final Identity identity;

    Proof(SignOffs stated, Identity identity) {
        this.stated = stated;
        this.identity = identity;
    }

    /** True when there is a signature, and nothing speaks against it. */
    boolean proves(SignOff one) {
        return one.readable()
                && one.signature().value().isPresent()
                && key(one).flatMap(Proof::publicKey).isPresent()
                && findings(one).isEmpty();
    }

    private Optional<SigningKey> key(SignOff one) {
        return one.key().value().flatMap(stated::key);
    }

    private static Optional<PublicKey> publicKey(SigningKey key) {
        return key.publicKey().value().flatMap(Ed25519::publicKey);
    }

    /** What speaks against the signature of a sign-off. */
    List<Finding> findings(SignOff one) {
        if (one.key().value().isPresent() != one.signature().value().isPresent()) {
            return List.of(half(one));
        }
        List<Finding> findings = new ArrayList<>();
        key(one).ifPresent(key -> {
            if (key.of().value().isPresent()
                    && !key.of().value().equals(one.by().value())) {
                findings.add(
                        Finding.refuses(
                                FOREIGN_KEY,
                                "",
                                one.key().where(),
                                "`" + one.key().characters() + "` is the key of `"
                                        + key.of().characters() + "` ("
                                        + key.of().where().position() + "), and `"
                                        + one.by().characters() + "` is said to have signed",
                                "a key proves that the person it belongs to signed, and nobody else; have that person sign who is named"));
                return;
            }
            notInForce(one, key).ifPresent(findings::add);
            publicKey(key)
                    .filter(known -> one.readable() && !holds(one, known))
                    .ifPresent(
                            known -> findings.add(
                                    Finding.refuses(
                                            DOES_NOT_HOLD,
                                            "",
                                            one.signature().where(),
                                            "the signature is not that of `"
                                                    + key.tag().characters() + "` over this sign-off",
                                            "sign-offs are not edited: fetch this one as it was, or have `"
                                                    + one.by().characters()
                                                    + "` sign again; a name spelled otherwise under `people` since then does this as well")));
        });
        return findings;
    }

    private static Finding half(SignOff one) {
        boolean key = one.key().value().isPresent();
        return Finding.refuses(
                HALF,
                "",
                (key ? one.key() : one.signature()).where(),
                key
                        ? "`" + one.key().characters() + "` is named, and there is no signature made with it"
                        : "there is a signature, and no `key` is named under which it holds",
                "let the program write sign-offs (`sign`); one that is only typed has neither");
    }

    private static Optional<Finding> notInForce(SignOff one, SigningKey key) {
        return one.on().value().filter(day -> !key.countsOn(day)).map(day -> {
            boolean early = key.from().value().filter(day::isBefore).isPresent();
            Stated<LocalDate> bound = early ? key.from() : key.withdrawn();
            return Finding.refuses(
                    NOT_IN_FORCE,
                    "",
                    one.on().where(),
                    "this was signed on " + day + " with `" + key.tag().characters() + "`, which "
                            + (early ? "counts only from " : "was withdrawn on ") + bound.characters() + " ("
                            + bound.where().position() + ")",
                    "have it signed with a key that counts on the day of signing");
        });
    }

    /** The name is part of what was signed; a name that was spelled otherwise then stands in the text that was kept. */
    private boolean holds(SignOff one, PublicKey key) {
        Set<String> names = new TreeSet<>();
        names.add(identity.nameOf(one.by()));
        stated.kept().signed(one).ifPresent(then -> names.addAll(namesThen(then, one)));
        return names.stream()
                .anyMatch(name -> Ed25519.holds(
                        key,
                        SigningMessage.of(identity.facts().id().characters(), name, one),
                        one.signature().characters()));
    }

    private static List<String> namesThen(Substance then, SignOff one) {
        String path = "people/" + Statement.step(one.by().characters()) + "/name";
        return then.statements().stream()
                .filter(statement -> statement.path().equals(path))
                .map(Statement::shown)
                .toList();
    }

    /** What is wrong with the keys themselves. */
    List<Finding> keys() {
        List<Finding> findings = new ArrayList<>();
        Map<PublicKey, SigningKey> first = new HashMap<>();
        for (SigningKey key : stated.keys()) {
            if (key.publicKey().value().isEmpty()) {
                continue;
            }
            Optional<PublicKey> known = publicKey(key);
            if (known.isEmpty()) {
                findings.add(
                        Finding.refuses(
                                NO_PUBLIC_KEY,
                                key.tag().characters(),
                                key.publicKey().where(),
                                "`public` of `" + key.tag().characters() + "` is not an Ed25519 public key",
                                "write in one run what `openssl pkey -in FILE -pubout` prints between its first and last line"));
                continue;
            }
            SigningKey other = first.putIfAbsent(known.get(), key);
            if (other != null && !other.of().characters().equals(key.of().characters())) {
                findings.add(Finding.refuses(
                        OF_TWO,
                        key.tag().characters(),
                        key.publicKey().where(),
                        "`" + key.tag().characters() + "` of `" + key.of().characters() + "` is the same key as `"
                                + other.tag().characters() + "` of `"
                                + other.of().characters() + "` ("
                                + other.publicKey().where().position() + ")",
                        "each person makes a key and keeps the half that signs; one that two people have proves nothing"
                                + " about either"));
            }
        }
        return findings;
    }
}
