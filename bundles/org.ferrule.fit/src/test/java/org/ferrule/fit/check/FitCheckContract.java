/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;

import org.ferrule.fit.device.Phase;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.passage.Terms;
import org.ferrule.fit.sample.SampleQuestion;
import org.ferrule.fit.sample.SampleQuestions;
import org.ferrule.fit.sample.TestRules;
import org.ferrule.fit.verdict.Reason;
import org.ferrule.fit.verdict.ReasonCode;
import org.ferrule.fit.verdict.Verdict;
import org.junit.jupiter.api.Test;

/** What every check keeps to. A test of a check extends it, and says what the check cannot do without. */
public abstract class FitCheckContract {
    private final List<FitQuestion> questions = SampleQuestions.various();

    /** The check under test, a new one each time. */
    protected abstract FitCheck check();

    /** Questions that lack a figure which the check needs; none when it needs none. */
    protected abstract Stream<SampleQuestion> questionsThatLackAFigure();

    @Test
    void givesTheSameAnswerTwice() {
        FitCheck check = check();
        assertEquals(answers(check, questions), answers(check, questions));
    }

    @Test
    void keepsNothingFromOneQuestionToTheNext() {
        List<FitQuestion> shuffled = new ArrayList<>(questions);
        Collections.shuffle(shuffled, new Random(5));
        assertEquals(answers(check(), questions), answers(check(), shuffled));
    }

    @Test
    void answersManyThreadsAtOnce() {
        FitCheck check = check();
        Map<Object, Finding> alone = answers(check, questions);
        assertTrue(Stream.generate(() -> questions).limit(50).parallel().map(q -> answers(check, q))
                .allMatch(alone::equals));
    }

    @Test
    void neverFitsWithoutAFigureThatItNeeds() {
        questionsThatLackAFigure().map(q -> q.under(TestRules.full()).question()).forEach(question -> {
            for (Phase phase : Phase.values()) {
                assertNotEquals(Verdict.FITS, check().check(question, phase).verdict());
            }
        });
    }

    @Test
    void reasonsCarryTheArgumentsOfTheirCodes() {
        for (Finding finding : answers(check(), questions).values()) {
            finding.reasons().forEach(r -> assertEquals(r.code().argumentCount(), r.arguments().size(), r::toString));
        }
    }

    @Test
    void verdictOtherThanFitsHasAReasonThatDecides() {
        for (Finding finding : answers(check(), questions).values()) {
            assertTrue(finding.verdict() == Verdict.FITS || finding.reasons().stream().map(Reason::code)
                    .anyMatch(c -> c.weight() == ReasonCode.Weight.DECIDES), finding::toString);
        }
    }

    @Test
    void findsNothingWhereItSaysThatItIsNotConcerned() {
        for (FitQuestion question : questions) {
            Terms terms = new Terms(question.direction(), question.reach(), question.conditions(), question.rules());
            for (Phase phase : Phase.values()) {
                Finding finding = check().check(question, phase);
                boolean finds = finding.verdict() != Verdict.FITS || !finding.reasons().isEmpty();
                assertTrue(!finds || check().concerns(terms, question.inner()), question::toString);
            }
        }
    }

    @Test
    void neverChangesAVerdictWhereMatricesLeaveItOut() {
        boolean changes = answers(check(), questions).values().stream().anyMatch(f -> f.verdict() != Verdict.FITS);
        assertTrue(!changes || check().inMatrix());
    }

    @Test
    void verdictInDetailIsTheSame() {
        Map<Object, Finding> detailed = answers(check().inDetail(), questions);
        answers(check(), questions).forEach(
                (question, finding) -> assertEquals(finding.verdict(), detailed.get(question).verdict()));
    }

    private static Map<Object, Finding> answers(FitCheck check, List<FitQuestion> asked) {
        Map<Object, Finding> findings = new HashMap<>();
        for (FitQuestion question : asked) {
            for (Phase phase : Phase.values()) {
                findings.put(List.of(question, phase), check.check(question, phase));
            }
        }
        return findings;
    }
}
