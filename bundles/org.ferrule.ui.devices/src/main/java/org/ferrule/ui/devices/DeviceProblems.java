/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.fieldassist.FieldDecorationRegistry;
import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.viewers.DecorationOverlayIcon;
import org.eclipse.jface.viewers.IDecoration;
import org.eclipse.swt.graphics.Image;
import org.ferrule.model.DeviceLine;
import org.ferrule.model.ElementPath;
import org.ferrule.model.check.Severity;
import org.ferrule.ui.Services;
import org.ferrule.ui.document.DocumentSession;
import org.ferrule.ui.look.Icons;
import org.ferrule.ui.problem.FoundProblem;
import org.ferrule.ui.problem.ProblemBoard;

/** The problems of every device and line of a library, as they were found last. */
final class DeviceProblems {

    private final DocumentSession session;
    private final ProblemBoard board = Services.get(ProblemBoard.class);
    private Map<EObject, List<FoundProblem>> problems = Map.of();

    DeviceProblems(DocumentSession session) {
        this.session = session;
        refresh();
    }

    /** Looks the problems up again. */
    void refresh() {
        Map<EObject, List<FoundProblem>> found = new HashMap<>();
        for (FoundProblem problem : board.of(session.file())) {
            whole(problem).ifPresent(object -> found.computeIfAbsent(object, o -> new ArrayList<>()).add(problem));
        }
        problems = found;
    }

    private Optional<EObject> whole(FoundProblem problem) {
        String first = problem.path().split("/", 2)[0];
        return session.document().flatMap(document -> ElementPath.resolve(document, first));
    }

    private List<FoundProblem> of(DeviceRow row) {
        return problems.getOrDefault(row.parts(), List.of());
    }

    /** Returns how many problems there are; empty for none. */
    String count(DeviceRow row) {
        return of(row).isEmpty() ? "" : String.valueOf(of(row).size());
    }

    /** Returns what to sort by: rows with errors first, then by number; null for none. */
    Integer sortable(DeviceRow row) {
        int weight = gravest(row) == Severity.ERROR ? Short.MAX_VALUE : 0;
        return of(row).isEmpty() ? null : -weight - of(row).size();
    }

    private Severity gravest(DeviceRow row) {
        return of(row).stream().map(FoundProblem::severity).min(Enum::compareTo).orElse(null);
    }

    /** Returns the icon of the kind, with a sign for the gravest problem. */
    Image image(DeviceRow row) {
        Icons icon = row.parts() instanceof DeviceLine ? Icons.LINE : Icons.of(row.kind());
        Severity severity = gravest(row);
        return severity == null || severity == Severity.INFO ? icon.image() : signed(icon, severity);
    }

    private static Image signed(Icons icon, Severity severity) {
        String key = DeviceProblems.class.getName() + icon + severity;
        if (JFaceResources.getImageRegistry().getDescriptor(key) == null) {
            JFaceResources.getImageRegistry().put(key,
                    new DecorationOverlayIcon(icon.image(), sign(severity), IDecoration.BOTTOM_LEFT));
        }
        return JFaceResources.getImageRegistry().get(key);
    }

    private static ImageDescriptor sign(Severity severity) {
        Image image = FieldDecorationRegistry.getDefault().getFieldDecoration(severity == Severity.ERROR
                ? FieldDecorationRegistry.DEC_ERROR : FieldDecorationRegistry.DEC_WARNING).getImage();
        return ImageDescriptor.createFromImageDataProvider(image::getImageData);
    }
}
