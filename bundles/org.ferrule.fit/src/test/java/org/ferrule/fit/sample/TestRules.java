/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.sample;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.SourceRef;
import org.ferrule.fit.rules.AfterUseRule;
import org.ferrule.fit.rules.ClearanceRule;
import org.ferrule.fit.rules.FigureClass;
import org.ferrule.fit.rules.Limits;
import org.ferrule.fit.rules.RuleSet;
import org.ferrule.fit.rules.Sampling;
import org.ferrule.fit.rules.Span;
import org.ferrule.quantity.Length;

/** A rule set in the making. Rules that are added later win over earlier ones that are as specific. */
public final class TestRules {
    private static final SourceRef HOUSE = new SourceRef("house rules of the test", "1", "");

    private final List<Span> spans = new ArrayList<>();
    private final List<ClearanceRule> clearances = new ArrayList<>();
    private final List<AfterUseRule> growth = new ArrayList<>();
    private Optional<Length> wireAhead = Optional.empty();
    private Optional<Sampling> sampling = Optional.empty();

    private final List<Limits.FlowLimit> flow = new ArrayList<>();
    private final List<Limits.Allowance> allowances = new ArrayList<>();
    private final List<Limits.ChanceLimit> chances = new ArrayList<>();

    private TestRules() {
    }

    /** Rules without any word in them. */
    public static TestRules silent() {
        return new TestRules();
    }

    /** Every figure without tolerance is exact; 0.025 mm are required; nothing grows; 30 mm of wire stay ahead. */
    public static TestRules exact() {
        return silent().spans("0 mm", "0 mm").required("0.025 mm").growth("1", "1", "1").wireAhead("30 mm");
    }

    /** Figures lie up to 0.01 mm off, crossing profiles up to 0.1 mm above; balloons grow by 10 to 30 %. */
    public static TestRules usual() {
        return exact().spans("0.01 mm", "0.01 mm").span(FigureClass.CROSSING_PROFILE, "0.02 mm", "0.1 mm")
                .growth("1.1", "1.2", "1.3").sampling("0.95", "0.99");
    }

    /** The usual ones with every allowance and limit: 80 mm for hub and valve, 100 mm of overlap and of grip. */
    public static TestRules full() {
        return usual().allow(Limits.Purpose.HUB_AND_VALVE, "80 mm").allow(Limits.Purpose.EXTENSION_OVERLAP, "100 mm")
                .allow(Limits.Purpose.GRIP, "100 mm").leastFlow(Limits.FlowUse.CONTRAST, "0.3")
                .leastFlow(Limits.FlowUse.PRESSURE, "0.2").greatestChance("0.001");
    }

    public TestRules spans(String below, String above) {
        for (FigureClass figure : FigureClass.values()) {
            span(figure, below, above);
        }
        return this;
    }

    public TestRules span(FigureClass figure, String below, String above, DeviceKind... kinds) {
        spans.add(new Span(figure, Set.of(kinds), Texts.length(below), Texts.length(above), HOUSE));
        return this;
    }

    public TestRules required(String clearance) {
        return required(Set.of(), Set.of(), clearance);
    }

    public TestRules required(Set<DeviceKind> outer, Set<DeviceKind> inner, String clearance) {
        clearances.add(new ClearanceRule(outer, inner, Texts.length(clearance), HOUSE));
        return this;
    }

    public TestRules growth(String low, String centre, String high, DeviceKind... kinds) {
        growth.add(new AfterUseRule(Set.of(kinds), new BigDecimal(low), new BigDecimal(centre), new BigDecimal(high),
                HOUSE));
        return this;
    }

    public TestRules wireAhead(String length) {
        wireAhead = Optional.of(Texts.length(length));
        return this;
    }

    public TestRules sampling(String confidence, String coverage) {
        sampling = Optional.of(new Sampling(new BigDecimal(confidence), new BigDecimal(coverage)));
        return this;
    }

    public TestRules allow(Limits.Purpose purpose, String length) {
        allowances.add(new Limits.Allowance(purpose, Texts.length(length), HOUSE));
        return this;
    }

    public TestRules leastFlow(Limits.FlowUse use, String share) {
        flow.add(new Limits.FlowLimit(use, new BigDecimal(share), HOUSE));
        return this;
    }

    public TestRules greatestChance(String chance) {
        chances.add(new Limits.ChanceLimit(new BigDecimal(chance), HOUSE));
        return this;
    }

    public RuleSet rules() {
        return new RuleSet("rules of the test", "1", spans, clearances, growth, wireAhead, sampling,
                new Limits(flow, allowances, List.of(), chances));
    }
}
