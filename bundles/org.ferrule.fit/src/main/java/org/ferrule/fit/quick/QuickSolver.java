/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.quick;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.IntStream;

import org.ferrule.fit.FitSolver;
import org.ferrule.fit.check.EdgeCheck;
import org.ferrule.fit.check.FitCheck;
import org.ferrule.fit.check.LengthCheck;
import org.ferrule.fit.check.PassageCheck;
import org.ferrule.fit.check.PortCheck;
import org.ferrule.fit.check.ReachCheck;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.passage.Conditions;
import org.ferrule.fit.passage.Direction;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.passage.Terms;
import org.ferrule.fit.rules.Limits;
import org.ferrule.quantity.Length;

/**
 * Answers many questions under the same terms in plain numbers: verdicts, authorities, marks and the place that decides,
 * without reasons. It says of each device, and of each pair, whether it can answer it; whatever it answers is what the
 * solver answers. Immutable and safe to use from many threads.
 */
public final class QuickSolver {
    private static final int KINDS = DeviceKind.values().length;
    private static final int MOST_REQUIRED = 1 << 30;
    private static final long NO_VALVE = -1;

    final QuickTerms lengths;
    private final Terms terms;
    private final List<FitCheck> others;
    private final Predicate<String> named;
    private final Map<String, Set<String>> tried = new HashMap<>();
    private final int[] required = new int[KINDS * KINDS];
    private final boolean covers;
    private final boolean rulesAll;
    private final boolean checksLength;
    private final boolean checksEdges;
    private final boolean checksPorts;
    /** What hub and valve take; {@link #NO_VALVE} where that is not checked. */
    private final long valve;

    private QuickSolver(Terms terms, FitSolver solver, Predicate<String> named) {
        this.terms = terms;
        this.named = named;
        this.lengths = QuickTerms.of(terms);
        this.covers = covers(terms, solver);
        this.checksLength = has(solver, LengthCheck.class);
        this.checksEdges = has(solver, EdgeCheck.class);
        this.checksPorts = lengths.asksForDistance() && has(solver, PortCheck.class);
        this.valve = lengths.asksForDistance() && has(solver, ReachCheck.class)
                ? valve(terms).map(Length::thirdNanometres).orElse(NO_VALVE)
                : NO_VALVE;
        this.others = solver.checks().stream().filter(check -> !isKnown(check)).toList();
        solver.bench().forEach(r -> tried.computeIfAbsent(r.outer(), outer -> new HashSet<>()).add(r.inner()));
        for (DeviceKind outer : DeviceKind.values()) {
            for (DeviceKind inner : DeviceKind.values()) {
                required[outer.ordinal() * KINDS + inner.ordinal()] = terms.rules().findClearance(outer, inner)
                        .map(rule -> (int) Math.min(MOST_REQUIRED, rule.required().thirdNanometres()))
                        .orElse(Passing.NOT_RULED);
            }
        }
        this.rulesAll = IntStream.of(required).noneMatch(r -> r == Passing.NOT_RULED);
    }

    private static boolean has(FitSolver solver, Class<? extends FitCheck> type) {
        return solver.checks().stream().anyMatch(type::isInstance);
    }

    private static boolean isKnown(FitCheck check) {
        return check instanceof PassageCheck || check instanceof LengthCheck || check instanceof EdgeCheck
                || check instanceof ReachCheck || check instanceof PortCheck;
    }

    private static Optional<Length> valve(Terms terms) {
        return terms.rules().limits().allowance(Limits.Purpose.HUB_AND_VALVE).map(Limits.Allowance::length);
    }

    /**
     * A quick way to the answers of a solver.
     *
     * @param solver the solver for cells under these terms
     * @param named whether a claim or a bench result names the device with that id; those that nobody names are equal
     *              when they are answered alike
     */
    public static QuickSolver of(Terms terms, FitSolver solver, Predicate<String> named) {
        return new QuickSolver(terms, solver, named);
    }

    /** Not under conditions beyond a device that passes alone, and not without the geometry of the passage. */
    private static boolean covers(Terms terms, FitSolver solver) {
        boolean canAsk = terms.direction() == Direction.TIP_FIRST || terms.reach().isPresent()
                || terms.rules().wireAhead().isPresent();
        return terms.conditions().equals(Conditions.NONE) && canAsk && has(solver, PassageCheck.class)
                && terms.reach().or(terms.rules()::wireAhead).filter(l -> !FlatStretches.isNear(l)).isEmpty()
                && valve(terms).filter(l -> !FlatStretches.isNear(l)).isEmpty();
    }

    /** Makes a lumen ready; nothing when pairs with it cannot be answered quickly. */
    public Optional<QuickOuter> outer(ReadDevice device, Lumen lumen) {
        return !covers ? Optional.empty()
                : QuickOuter.of(device, lumen, terms, name(device), tried.getOrDefault(device.device().id(), Set.of()));
    }

    /** Makes an inner device ready; nothing when pairs with it cannot be answered quickly. */
    public Optional<QuickInner> inner(ReadDevice device) {
        boolean concernsOthers = others.stream().anyMatch(check -> check.concerns(terms, device));
        return !covers || concernsOthers ? Optional.empty() : QuickInner.of(device, terms, name(device));
    }

    private Optional<String> name(ReadDevice device) {
        return Optional.of(device.device().id()).filter(named);
    }

    /** Makes inner devices ready to be asked about side by side. */
    public QuickBlock block(List<Optional<QuickInner>> inner) {
        return new QuickBlock(inner, lengths);
    }

    /** A scratch pad for pairs, for one thread. */
    public QuickAnswer pad() {
        return new QuickAnswer(this);
    }

    /** A scratch pad for blocks, for one thread. */
    public QuickRow row() {
        return new QuickRow(this);
    }

    /** Whether there is a clearance for all kinds. */
    boolean rulesAll() {
        return rulesAll;
    }

    int required(int outerKind, int innerKind) {
        return required[outerKind * KINDS + innerKind];
    }

    /** Whether the answers of devices that pass all of a lumen can be read from their widest places. */
    boolean canPassAll(QuickOuter outer) {
        return outer.extremes.isKnown && !(lengths.reachStated() && outer.length == 0);
    }

    /** How far devices travel beyond a lumen, less what each travels by its own length. */
    long travelBeyond(QuickOuter outer) {
        return (lengths.asksForDistance() ? outer.lengthNeeded : 0) - outer.length;
    }

    /** What is found of lengths, whatever claims say: whether the device is long enough, and its port stays inside. */
    int lengthVerdict(QuickOuter outer, QuickInner inner, boolean unstated) {
        int ofLength = checksLength ? lengths.lengthVerdict(outer, inner, unstated) : Passing.FITS;
        int ofPort = checksPorts && outer.holdsPorts ? inner.port : Passing.FITS;
        return Math.max(Math.max(ofLength, ofPort), valveVerdict(outer, inner));
    }

    /** As {@code ReachCheck} has it. */
    private int valveVerdict(QuickOuter outer, QuickInner inner) {
        if (valve == NO_VALVE || !outer.hasValve
                || Math.max(0, inner.insertableLength) >= outer.lengthNeeded + valve) {
            return Passing.FITS;
        }
        return inner.statedLength == QuickInner.NOT_STATED ? Passing.UNKNOWN : Passing.TIGHT;
    }

    /** The stated length from which on no check finds anything of a device's length; 0 or more. */
    long enoughLength(QuickOuter outer) {
        boolean asks = checksLength || valve != NO_VALVE;
        return asks ? Math.max(0, outer.lengthNeeded + Math.max(0, valve)) : 0;
    }

    boolean checksEdges() {
        return checksEdges && lengths.tipFirst();
    }

    int said(QuickOuter outer, QuickInner inner) {
        int said = 0;
        if (inner.claims.maySpeakOf(outer.kindBit)) {
            said = inner.claims.say(outer.partner, outer.label, lengths.wire(outer, inner));
        }
        if (outer.claims.maySpeakOf(inner.kindBit)) {
            said |= outer.claims.say(inner.partner, lengths.entering(outer, inner), lengths.wire(outer, inner));
        }
        return said;
    }
}
