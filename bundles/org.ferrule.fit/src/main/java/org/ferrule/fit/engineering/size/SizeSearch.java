/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.engineering.size;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.LongFunction;

import org.ferrule.fit.FitSolver;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.engineering.change.Replacement;
import org.ferrule.fit.passage.FitAnswer;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.passage.PhaseAnswer;
import org.ferrule.fit.verdict.Verdict;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthUnit;

/**
 * Finds the sizes of a section at which verdicts flip, by asking the solver itself at one size after the other, with
 * all its checks, claims and bench results. A verdict only gets worse the thicker a shaft and the narrower a lumen is,
 * so that halving finds the last third of a nanometre.
 */
public final class SizeSearch {
    /** Wider than any device or lumen that this is about. */
    private static final Length LARGEST = Length.of("50", LengthUnit.MILLIMETRE);
    private static final long STEP = 1;

    private final MovableSection section;
    private final FitSolver solver;
    private final FitQuestion question;
    private final Map<Long, FitAnswer> asked = new HashMap<>();

    private SizeSearch(MovableSection section, FitSolver solver, FitQuestion question) {
        this.section = section;
        this.solver = solver;
        this.question = question;
    }

    /**
     * Searches.
     *
     * @param section of a device that stands in the questions
     * @param questions one for each partner
     * @throws IllegalArgumentException naming the device when a question has nothing to do with it
     * @throws IllegalStateException naming the sizes when a check gets better and worse again
     */
    public static RequiredSize of(MovableSection section, List<FitQuestion> questions, FitSolver solver) {
        List<PartnerSizes> partners = new ArrayList<>();
        for (FitQuestion question : questions) {
            requireAbout(section, question);
            SizeSearch search = new SizeSearch(section, solver, question);
            for (Phase phase : Phase.values()) {
                partners.add(search.partner(phase));
            }
        }
        return new RequiredSize(section, section.sizeAt(new Length(least(section))),
                section.sizeAt(new Length(most(section))), partners);
    }

    private static void requireAbout(MovableSection section, FitQuestion question) {
        Device device = section.place().device();
        if (!Replacement.of(device, device, question.rules()).touches(question)) {
            throw new IllegalArgumentException("the question about device \"" + question.inner().device().id()
                    + "\" in \"" + question.outer().device().id() + "\" is not about device \"" + device.id() + "\"");
        }
    }

    private static long least(MovableSection section) {
        return section.leastMove().thirdNanometres();
    }

    private static long most(MovableSection section) {
        return LARGEST.minus(section.printed().largest()).thirdNanometres();
    }

    private PartnerSizes partner(Phase phase) {
        long least = least(section);
        long most = most(section);
        boolean bore = section.isBore();
        return new PartnerSizes(question, phase, at(bore ? most : least, phase), at(bore ? least : most, phase),
                flips(least, most, by -> at(by, phase).verdict()), flips(least, most, by -> at(by, phase).geometry()));
    }

    private List<Flip> flips(long least, long most, LongFunction<Verdict> verdict) {
        List<Flip> flips = new ArrayList<>();
        long from = least;
        while (verdict.apply(from) != verdict.apply(most)) {
            long last = lastAsAt(from, most, verdict);
            flips.add(new Flip(verdict.apply(from), verdict.apply(last + STEP), section.sizeAt(new Length(last)),
                    section.sizeAt(new Length(last + STEP))));
            from = last + STEP;
        }
        return flips;
    }

    /** The last move with the verdict of the first one, which the last one does not have. */
    private long lastAsAt(long from, long to, LongFunction<Verdict> verdict) {
        long holds = from;
        long fails = to;
        while (fails - holds > STEP) {
            long middle = holds + (fails - holds) / 2;
            Verdict found = verdict.apply(middle);
            requireBetween(verdict.apply(from), found, verdict.apply(to), middle);
            if (found == verdict.apply(from)) {
                holds = middle;
            } else {
                fails = middle;
            }
        }
        return holds;
    }

    private void requireBetween(Verdict start, Verdict found, Verdict end, long by) {
        boolean tooGood = found.compareTo(start) < 0 && found.compareTo(end) < 0;
        boolean tooBad = found.compareTo(start) > 0 && found.compareTo(end) > 0;
        if (tooGood || tooBad) {
            throw new IllegalStateException("the verdict of \"" + question.inner().device().id() + "\" in \""
                    + question.outer().device().id() + "\" gets better and worse again: " + found.word() + " at "
                    + section.sizeAt(new Length(by)).distal() + ", between " + start.word() + " and " + end.word());
        }
    }

    private PhaseAnswer at(long by, Phase phase) {
        return asked.computeIfAbsent(by, this::ask).in(phase);
    }

    private FitAnswer ask(long by) {
        Device moved = section.movedBy(new Length(by));
        return solver.answer(Replacement.of(section.place().device(), moved, question.rules()).in(question));
    }
}
