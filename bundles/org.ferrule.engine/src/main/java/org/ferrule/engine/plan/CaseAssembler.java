/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.ferrule.engine.catalogue.Catalogue;
import org.ferrule.escalation.equipment.Instruments;
import org.ferrule.escalation.equipment.Stock;
import org.ferrule.escalation.technique.Ladder;
import org.ferrule.fit.FitSolver;
import org.ferrule.fit.check.FitCheck;
import org.ferrule.fit.device.BenchResult;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.rules.RuleSet;
import org.ferrule.model.CaseDocument;
import org.ferrule.model.ShelfDocument;
import org.ferrule.model.TechniqueLibrary;
import org.ferrule.shelf.stock.Shelf;

/**
 * Makes cases ready to be planned, again and again while they and what they refer to are edited: while the devices and
 * the rules stay the same, what was answered about them is kept. To be used where the model may be read; not safe for
 * use from several threads, while what it makes is.
 */
public final class CaseAssembler {
    private final List<FitCheck> checks;
    private Instruments instruments;
    private List<Device> devices;
    private List<BenchResult> bench;

    /** An assembler whose cases are planned with these checks. */
    public CaseAssembler(List<FitCheck> checks) {
        this.checks = List.copyOf(checks);
    }

    /**
     * The case as it stands now.
     *
     * @param file the case
     * @param catalogue the devices of its libraries
     * @param rules its rule set
     * @param techniques its techniques
     * @param shelf its shelf; absent where it names none
     * @param today the day of a case that does not say on which day it is
     */
    public AssembledCase assemble(CaseDocument file, Catalogue catalogue, RuleSet rules, TechniqueLibrary techniques,
            Optional<ShelfDocument> shelf, LocalDate today) {
        PlanProblems problems = new PlanProblems();
        DeviceIds ids = new DeviceIds(catalogue, problems);
        ids.reportShared(file);
        Ladder ladder = LadderTranslator.translate(techniques, ids, problems);
        Stock stock = shelf.map(s -> ShelfTranslator.translate(s, ids, problems))
                .orElseGet(() -> new Stock(new Shelf(List.of()), Map.of()));
        CaseTranslator translator = new CaseTranslator(ladder, stock, ids, problems);
        return new AssembledCase(translator.translate(file, today), ladder, stock,
                instruments(ids.devices(), catalogue.bench(), rules), problems.all());
    }

    private Instruments instruments(List<Device> all, List<BenchResult> results, RuleSet rules) {
        if (instruments == null || !all.equals(devices) || !results.equals(bench)
                || !rules.equals(instruments.rules())) {
            instruments = new Instruments(all, rules, FitSolver.with(checks, results));
            devices = all;
            bench = results;
        }
        return instruments;
    }
}
