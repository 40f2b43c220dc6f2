/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.rules;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

import org.ferrule.fit.device.DeviceKind;
import org.ferrule.quantity.Length;

/**
 * The clearances and spans in force, each with its source. What it does not say is an error where it is needed, never
 * a silent default.
 *
 * @param title for people
 * @param revision of the rule set
 * @param spans in the order of the document; the more specific wins, then the later
 * @param clearances likewise
 * @param afterUse likewise
 * @param wireAhead how much of a wire stays beyond a device that is loaded over it, when no reach is asked for
 * @param sampling how a sample of measured parts becomes an interval; absent when the rule set does not say
 * @param limits thresholds and allowances beyond clearances
 */
public record RuleSet(String title, String revision, List<Span> spans, List<ClearanceRule> clearances,
        List<AfterUseRule> afterUse, Optional<Length> wireAhead, Optional<Sampling> sampling,
        Limits limits) {

    public RuleSet {
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(revision, "revision");
        spans = List.copyOf(spans);
        clearances = List.copyOf(clearances);
        afterUse = List.copyOf(afterUse);
        Objects.requireNonNull(wireAhead, "wireAhead");
        Objects.requireNonNull(sampling, "sampling");
        Objects.requireNonNull(limits, "limits");
    }

    /** A rule set without thresholds and allowances beyond clearances. */
    public RuleSet(String title, String revision, List<Span> spans, List<ClearanceRule> clearances,
            List<AfterUseRule> afterUse, Optional<Length> wireAhead, Optional<Sampling> sampling) {
        this(title, revision, spans, clearances, afterUse, wireAhead, sampling, Limits.NONE);
    }

    /** The same rules if no kind of stated figure ran low: the comparison shows what that changes. */
    public RuleSet withoutBias() {
        return new RuleSet(title, revision, spans.stream().map(Span::withoutBias).toList(), clearances, afterUse,
                wireAhead, sampling, limits);
    }

    /**
     * The span of a class of figures for a kind of device.
     *
     * @throws RuleSetException naming both when there is none
     */
    public Span span(FigureClass figure, DeviceKind kind) {
        return mostSpecific(spans.stream().filter(s -> s.figure() == figure).toList(), Span::kinds, kind)
                .orElseThrow(() -> new RuleSetException("the rule set \"" + title + "\" has no span for the "
                        + figure.word() + " of a " + kind.word()));
    }

    /**
     * The rule for the clearance that must be left.
     *
     * @throws RuleSetException naming both kinds when there is none
     */
    public ClearanceRule clearance(DeviceKind outer, DeviceKind inner) {
        return findClearance(outer, inner)
                .orElseThrow(() -> new RuleSetException("the rule set \"" + title + "\" has no clearance for a "
                        + inner.word() + " in a " + outer.word()));
    }

    /** The rule for the clearance that must be left, where there is one. */
    public Optional<ClearanceRule> findClearance(DeviceKind outer, DeviceKind inner) {
        return clearances.stream().filter(r -> r.speaksOf(outer, inner))
                .reduce((a, b) -> b.specificity() >= a.specificity() ? b : a);
    }

    /**
     * How a folded balloon of that kind grows by use.
     *
     * @throws RuleSetException naming the kind when there is no such rule
     */
    public AfterUseRule growth(DeviceKind kind) {
        return mostSpecific(afterUse, AfterUseRule::kinds, kind).orElseThrow(() -> new RuleSetException(
                "the rule set \"" + title + "\" does not say how a " + kind.word() + " grows by use"));
    }

    /**
     * How much of a wire stays beyond a device loaded over it, when no reach is asked for.
     *
     * @throws RuleSetException when the rule set does not say
     */
    public Length wireAheadOrFail() {
        return wireAhead.orElseThrow(() -> new RuleSetException(
                "the rule set \"" + title + "\" does not say how much wire stays beyond a device (wireAhead)"));
    }

    private static <R> Optional<R> mostSpecific(List<R> rules, Function<R, Set<DeviceKind>> kinds, DeviceKind kind) {
        Comparator<R> bySpecificity = Comparator.comparing(rule -> !kinds.apply(rule).isEmpty());
        return rules.stream().filter(r -> kinds.apply(r).isEmpty() || kinds.apply(r).contains(kind))
                .reduce((a, b) -> bySpecificity.compare(b, a) >= 0 ? b : a);
    }
}
