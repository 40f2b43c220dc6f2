/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli.internal;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.ferrule.engine.catalogue.Catalogue;
import org.ferrule.engine.plan.ShelfTranslator;
import org.ferrule.engine.plan.ShelfTranslator.TranslatedShelf;
import org.ferrule.escalation.plan.Plan;
import org.ferrule.model.DocumentKind;
import org.ferrule.model.ShelfDocument;
import org.ferrule.plansheet.ready.PlanNeeds;
import org.ferrule.shelf.ready.CasesAnswer;
import org.ferrule.shelf.ready.PlannedCase;
import org.ferrule.shelf.ready.ReadinessCheck;
import org.ferrule.shelf.stock.BelowPar;
import org.ferrule.shelf.stock.Item;
import org.ferrule.shelf.stock.Lot;
import org.ferrule.shelf.stock.Shelf;

/** A shelf that is read, with the cases that are planned from it. */
public final class ShelfRun {
    private final LocalDate day;
    private final TranslatedShelf translated;
    private final Map<String, Plan> plans = new LinkedHashMap<>();
    private final List<String> problems = new ArrayList<>();
    private final CasesAnswer cases;

    /**
     * A lot that has expired.
     *
     * @param item of which
     * @param lot the lot
     */
    public record Expired(Item item, Lot lot) {
    }

    /**
     * Reads a shelf and plans cases from it.
     *
     * @param day on which stock is looked at, and the cases are done where it is named; else today, and theirs
     */
    public ShelfRun(Path file, List<Path> cases, Optional<LocalDate> day) {
        DocumentFiles files = new DocumentFiles();
        ShelfDocument document = files.require(file, ShelfDocument.class, DocumentKind.SHELF);
        this.day = day.orElseGet(LocalDate::now);
        this.translated = ShelfTranslator.translate(document, Catalogue.of(files.libraries(file, document.getLibraries())));
        translated.problems().forEach(problem -> problems.add(file + ": " + ReferenceProblems.line(problem)));
        List<PlannedCase> planned = new ArrayList<>();
        for (Path path : cases) {
            PlanRun run = PlanRun.with(document, path, day);
            String id = path.getFileName().toString();
            plans.put(id, run.plan());
            planned.add(PlanNeeds.of(id, run.plan(), run.assembled().stock(), run.words().names()));
        }
        this.cases = ReadinessCheck.ofCases(shelf(), planned);
    }

    public Shelf shelf() {
        return translated.stock().shelf();
    }

    /** The day on which stock is looked at. */
    public LocalDate day() {
        return day;
    }

    public List<BelowPar> belowPar() {
        return shelf().belowPar(day);
    }

    /** All lots that may not be used on the day. */
    public List<Expired> expired() {
        return shelf().items().stream().flatMap(item -> item.lots().stream().filter(lot -> !lot.isUsableOn(day))
                .map(lot -> new Expired(item, lot))).toList();
    }

    /** How ready the cases are, served by their days and then as they were named. */
    public CasesAnswer cases() {
        return cases;
    }

    /** The plan of a case, by the name of its file. */
    public Plan plan(String id) {
        return plans.get(id);
    }

    /** What cannot be counted on as it is written, one line each. */
    public List<String> problems() {
        return List.copyOf(problems);
    }

    /** Whether nothing is below par or expired, every need is covered, and all that must be at hand is. */
    public boolean isInOrder() {
        boolean covered = cases.cases().stream().allMatch(c -> c.readiness().isCovered());
        boolean atHand = plans.values().stream().flatMap(plan -> plan.bailOut().stream()).allMatch(b -> b.isReady());
        return belowPar().isEmpty() && expired().isEmpty() && covered && atHand && problems.isEmpty();
    }
}
