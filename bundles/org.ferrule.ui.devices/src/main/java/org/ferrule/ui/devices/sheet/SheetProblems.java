/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

import org.eclipse.emf.ecore.EObject;
import org.ferrule.model.DeviceLibrary;
import org.ferrule.model.DeviceParts;
import org.ferrule.model.check.Severity;
import org.ferrule.ui.Services;
import org.ferrule.ui.document.DocumentSession;
import org.ferrule.ui.problem.FoundProblem;
import org.ferrule.ui.problem.ProblemBoard;

/** The problems of every device and line of a library, as they were found last. */
public final class SheetProblems {

    private final DocumentSession session;
    private final ProblemBoard board = Services.get(ProblemBoard.class);
    private Map<EObject, List<FoundProblem>> problems = Map.of();

    /** Looks up the problems of a library. */
    public SheetProblems(DocumentSession session) {
        this.session = session;
        refresh();
    }

    /** Looks the problems up again. */
    public void refresh() {
        Map<EObject, List<FoundProblem>> found = new HashMap<>();
        Map<String, List<FoundProblem>> byStep = board.of(session.file()).stream()
                .collect(Collectors.groupingBy(problem -> problem.path().split("/", 2)[0]));
        if (!byStep.isEmpty() && session.document().orElse(null) instanceof DeviceLibrary library) {
            collect("lines", library.getLines(), byStep, found);
            collect("devices", library.getDevices(), byStep, found);
        }
        problems = found;
    }

    /** Paths name a device by its id or by its place; looking each path up by itself would take too long for many. */
    private static void collect(String list, List<? extends DeviceParts> all, Map<String, List<FoundProblem>> byStep,
            Map<EObject, List<FoundProblem>> found) {
        for (int i = 0; i < all.size(); i++) {
            DeviceParts parts = all.get(i);
            List<FoundProblem> own = new ArrayList<>(byStep.getOrDefault(step(list, parts.getId()), List.of()));
            own.addAll(byStep.getOrDefault(step(list, String.valueOf(i)), List.of()));
            if (!own.isEmpty()) {
                found.put(parts, own);
            }
        }
    }

    private static String step(String list, String key) {
        return list + "[" + key + "]";
    }

    private List<FoundProblem> of(SheetRow row) {
        return problems.getOrDefault(row.parts(), List.of());
    }

    /** Returns how many problems there are; empty for none. */
    String count(SheetRow row) {
        return of(row).isEmpty() ? "" : String.valueOf(of(row).size());
    }

    /** Returns what to sort by: rows with errors first, then by number; null for none. */
    SortKey sortable(SheetRow row) {
        int weight = gravest(row) == Severity.ERROR ? Short.MAX_VALUE : 0;
        return of(row).isEmpty() ? null : SortKey.of(-weight - of(row).size());
    }

    /** Tells whether anything is wrong or doubtful. */
    public boolean any(SheetRow row) {
        return !of(row).isEmpty();
    }

    /** Returns how grave the gravest problem is; null for none. */
    public Severity gravest(SheetRow row) {
        return of(row).stream().map(FoundProblem::severity).min(Enum::compareTo).orElse(null);
    }

    /** Returns what is wrong, each on a line of its own; empty for nothing. */
    public String words(SheetRow row) {
        return of(row).stream().map(FoundProblem::message).collect(Collectors.joining("\n"));
    }
}
