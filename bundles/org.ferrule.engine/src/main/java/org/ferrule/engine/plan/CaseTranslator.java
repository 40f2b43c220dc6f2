/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.plan;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.ferrule.escalation.equipment.Stock;
import org.ferrule.escalation.state.CaseFile;
import org.ferrule.escalation.technique.Ladder;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.model.CaseDocument;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.model.StatedFact;

/** Copies a case. */
final class CaseTranslator {
    private final Ladder ladder;
    private final Stock stock;
    private final DeviceIds devices;
    private final PlanProblems problems;

    CaseTranslator(Ladder ladder, Stock stock, DeviceIds devices, PlanProblems problems) {
        this.ladder = ladder;
        this.stock = stock;
        this.devices = devices;
        this.problems = problems;
    }

    /**
     * The case.
     *
     * @param today the day of a case that does not say on which day it is
     */
    CaseFile translate(CaseDocument file, LocalDate today) {
        Set<String> moves = new HashSet<>();
        ladder.setups().forEach(s -> moves.add(s.id()));
        ladder.techniques().forEach(t -> moves.add(t.id()));
        return new CaseFile(file.getTitle() == null ? "" : file.getTitle(), day(file, today),
                new SystemTranslator(devices, problems).translate(file), new TargetTranslator(problems).translate(file),
                deliver(file), facts(file), new AimTranslator(problems).translate(file),
                new PlanFigures(problems).costs(file.getSpent()),
                new LogTranslator(moves, stock, problems).translate(file.getLog()));
    }

    private LocalDate day(CaseDocument file, LocalDate today) {
        try {
            if (file.getDay() != null) {
                return LocalDate.parse(file.getDay());
            }
            problems.add(file, Literals.CASE_DOCUMENT__DAY, "the case has no day; " + today + " is taken");
        } catch (DateTimeException e) {
            problems.add(file, Literals.CASE_DOCUMENT__DAY,
                    "\"" + file.getDay() + "\" is no date; " + today + " is taken");
        }
        return today;
    }

    private Optional<String> deliver(CaseDocument file) {
        return Optional.ofNullable(file.getDeliver()).map(reference -> devices.inPlace(file,
                Literals.CASE_DOCUMENT__DELIVER, reference, DeviceKind.STENT_SYSTEM));
    }

    /** What is stated both ways does not hold. */
    private Map<String, Boolean> facts(CaseDocument file) {
        Map<String, Boolean> facts = new LinkedHashMap<>();
        for (StatedFact stated : file.getFacts()) {
            if (stated.getFact() == null || !ladder.facts().containsKey(stated.getFact())) {
                problems.add(stated, Literals.STATED_FACT__FACT, stated.getFact() == null
                        ? "it is not said what is stated"
                        : "the techniques know no fact \"" + stated.getFact() + "\"");
            }
            if (stated.getFact() != null && stated.isSetHolds()) {
                Boolean before = facts.putIfAbsent(stated.getFact(), stated.isHolds());
                if (before != null && before != stated.isHolds()) {
                    problems.add(stated, Literals.STATED_FACT__HOLDS,
                            "stated both ways: it is taken not to hold");
                    facts.put(stated.getFact(), false);
                }
            }
        }
        return facts;
    }
}
