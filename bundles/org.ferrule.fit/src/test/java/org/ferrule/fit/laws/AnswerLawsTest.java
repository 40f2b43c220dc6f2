/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.laws;

import static org.ferrule.fit.sample.SampleBench.didNotPass;
import static org.ferrule.fit.sample.SampleBench.passed;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.function.Consumer;

import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.passage.FitAnswer;
import org.ferrule.fit.passage.PhaseAnswer;
import org.ferrule.fit.sample.SampleBench;
import org.ferrule.fit.sample.SampleClaim;
import org.ferrule.fit.sample.SampleDevice;
import org.ferrule.fit.sample.SampleQuestion;
import org.ferrule.fit.verdict.Authority;
import org.ferrule.fit.verdict.Reason;
import org.ferrule.fit.verdict.ReasonCode;
import org.ferrule.fit.verdict.Verdict;
import org.ferrule.quantity.LengthUnit;
import org.junit.jupiter.api.Test;

/** What holds of every answer, whoever decides it. */
class AnswerLawsTest {
    private static final int CASES = 200;

    @Test
    void reasonsAreCompleteOnceAndInOrder() {
        checkAnswers(answer -> {
            List<Reason> reasons = answer.reasons();
            reasons.forEach(r -> assertEquals(r.code().argumentCount(), r.arguments().size(), r::toString));
            assertEquals(reasons.size(), new HashSet<>(reasons).size(), "every reason once");
            assertEquals(reasons.stream().sorted(Comparator.comparing(r -> r.code().weight())).toList(), reasons);
        });
    }

    @Test
    void answerBeginsWithAReasonThatDecides() {
        // What does not enter the lumen at all fits without any.
        checkAnswers(answer -> assertTrue(answer.reasons().stream().findFirst()
                .map(r -> r.code().weight() == ReasonCode.Weight.DECIDES)
                .orElse(answer.verdict() == Verdict.FITS && answer.clearance().isEmpty())));
    }

    @Test
    void placeAndClearanceComeTogether() {
        checkAnswers(answer -> answer.limiting().ifPresentOrElse(
                place -> assertEquals(place.lumenDiameter().low().minus(place.deviceDiameter().high()),
                        answer.clearance().get().worst()),
                () -> assertTrue(answer.clearance().isEmpty())));
    }

    @Test
    void lanesAreInOrder() {
        checkAnswers(answer -> answer.clearance().ifPresent(c -> assertTrue(
                c.worst().compareTo(c.nominal()) <= 0 && c.nominal().compareTo(c.best()) <= 0)));
    }

    @Test
    void unknownGeometryIsNeverTakenToFit() {
        checkAnswers(answer -> assertTrue(answer.geometry() != Verdict.UNKNOWN || answer.verdict() != Verdict.FITS
                || answer.authority() != Authority.GEOMETRY));
    }

    @Test
    void noStatementMakesBlockedGeometryFit() {
        checkAnswers(answer -> assertTrue(answer.geometry() != Verdict.BLOCKED || answer.verdict() != Verdict.FITS));
    }

    @Test
    void furtherNoNeverImprovesAVerdict() {
        Cases.check(CASES, random -> {
            SampleQuestion question = stated(RandomPassages.any(random), random, anyClaim(random))
                    .bench(anyResults(random));
            FitAnswer before = question.answer();
            FitAnswer after = question.bench(didNotPass("inner", "outer")).answer();
            for (Phase phase : Phase.values()) {
                assertTrue(after.in(phase).verdict().compareTo(before.in(phase).verdict()) >= 0);
                assertTrue(after.in(phase).verdict().compareTo(Verdict.TIGHT) >= 0);
            }
        });
    }

    private static void checkAnswers(Consumer<PhaseAnswer> law) {
        Cases.check(CASES, random -> {
            RandomPassage passage = RandomPassages.any(random);
            FitAnswer answer = stated(passage, random, anyClaim(random)).bench(anyResults(random)).answer();
            law.accept(answer.in());
            law.accept(answer.out());
        });
    }

    private static SampleQuestion stated(RandomPassage passage, Random random, SampleClaim claim) {
        SampleDevice inner = passage.inner(LengthUnit.MILLIMETRE);
        SampleDevice claiming = random.nextBoolean() ? inner : inner.claim(claim);
        return passage.question(claiming, passage.outer(LengthUnit.MILLIMETRE), LengthUnit.MILLIMETRE);
    }

    private static SampleClaim anyClaim(Random random) {
        SampleClaim claim = switch (random.nextInt(4)) {
            case 0 -> SampleClaim.compatible();
            case 1 -> SampleClaim.notCompatible();
            default -> SampleClaim.minimumLumen("0." + (7 + random.nextInt(3)) + " mm");
        };
        return claim.kinds(DeviceKind.GUIDE_CATHETER).covers(Phase.values()[random.nextInt(2)]);
    }

    private static SampleBench[] anyResults(Random random) {
        return switch (random.nextInt(4)) {
            case 0 -> new SampleBench[] { passed("inner", "outer") };
            case 1 -> new SampleBench[] { didNotPass("inner", "outer").covers(Phase.OUT) };
            case 2 -> new SampleBench[] { passed("inner", "outer"), didNotPass("inner", "outer") };
            default -> new SampleBench[0];
        };
    }
}
