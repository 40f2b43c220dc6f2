/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.escalation.problem;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.ferrule.engine.catalogue.Catalogue;
import org.ferrule.engine.catalogue.LibraryReader;
import org.ferrule.engine.plan.LadderTranslator;
import org.ferrule.engine.plan.PlanProblem;
import org.ferrule.engine.plan.ShelfTranslator;
import org.ferrule.model.DeviceLibrary;
import org.ferrule.model.Document;
import org.ferrule.model.ElementPath;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.model.ShelfDocument;
import org.ferrule.model.TechniqueLibrary;
import org.ferrule.model.check.Severity;
import org.ferrule.ui.document.DocumentRecord;
import org.ferrule.ui.problem.FoundProblem;
import org.ferrule.ui.problem.ProblemRequest;
import org.ferrule.ui.problem.ProblemSource;

/** Finds what of techniques and of a shelf cannot be planned with, where it is written, whatever case uses them. */
public final class PlannedWithProblems implements ProblemSource {

    /** Which devices there are only a case knows, or a shelf that names libraries. */
    private static final List<String> OF_DEVICES = Stream.of(Literals.ROLE__DEVICES, Literals.STOCK_ITEM__DEVICE)
            .map(EStructuralFeature::getName).toList();

    @Override
    public List<FoundProblem> find(ProblemRequest request, IProgressMonitor monitor) throws CoreException {
        Document document = request.record().document().orElse(null);
        if (document instanceof TechniqueLibrary techniques) {
            return found(request.record(), techniques, withoutDevices(
                    LadderTranslator.translate(techniques, Catalogue.of(List.of())).problems()));
        }
        return document instanceof ShelfDocument shelf ? found(request.record(), shelf, problems(request, shelf))
                : List.of();
    }

    private static List<PlanProblem> problems(ProblemRequest request, ShelfDocument shelf) throws CoreException {
        List<LibraryReader> libraries = new ArrayList<>();
        for (String path : shelf.getLibraries()) {
            request.referenced(path).flatMap(DocumentRecord::document).filter(DeviceLibrary.class::isInstance)
                    .ifPresent(library -> libraries.add(new LibraryReader(path, (DeviceLibrary) library)));
        }
        List<PlanProblem> all = ShelfTranslator.translate(shelf, Catalogue.of(libraries)).problems();
        return libraries.size() == shelf.getLibraries().size() && !libraries.isEmpty() ? all : withoutDevices(all);
    }

    private static List<PlanProblem> withoutDevices(List<PlanProblem> problems) {
        return problems.stream().filter(problem -> !OF_DEVICES.contains(problem.feature())).toList();
    }

    private static List<FoundProblem> found(DocumentRecord record, Document document, List<PlanProblem> problems) {
        return problems.stream().map(problem -> found(record, document, problem)).toList();
    }

    private static FoundProblem found(DocumentRecord record, Document document, PlanProblem problem) {
        EObject object = ElementPath.resolve(document, problem.path()).orElse(document);
        EStructuralFeature feature = problem.feature().isEmpty() ? null
                : object.eClass().getEStructuralFeature(problem.feature());
        return FoundProblem.at(record, object, feature, Severity.WARNING, "plan", problem.message());
    }
}
