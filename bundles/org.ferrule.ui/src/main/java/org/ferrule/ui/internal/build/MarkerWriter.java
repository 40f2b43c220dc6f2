/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.build;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.resources.IWorkspace;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IProgressMonitor;
import org.ferrule.model.check.Severity;
import org.ferrule.ui.problem.FoundProblem;
import org.ferrule.ui.problem.ProblemMarkers;

/** Makes the markers of a file agree with its problems; markers that agree already stay. */
public final class MarkerWriter {

    private static final int MOST_CHARACTERS = 20_000;

    /** Replaces the markers of the file where they differ from the problems. */
    public void write(IFile file, List<FoundProblem> problems, IProgressMonitor monitor) throws CoreException {
        IWorkspace workspace = file.getWorkspace();
        workspace.run(m -> replace(file, problems), workspace.getRuleFactory().markerRule(file),
                IWorkspace.AVOID_UPDATE, monitor);
    }

    private static void replace(IFile file, List<FoundProblem> problems) throws CoreException {
        if (!file.exists()) {
            return;
        }
        Map<Map<String, Object>, Integer> wanted = new LinkedHashMap<>();
        problems.forEach(problem -> wanted.merge(attributes(problem), 1, Integer::sum));
        for (IMarker marker : file.findMarkers(ProblemMarkers.TYPE, true, IResource.DEPTH_ZERO)) {
            Map<String, Object> attributes = Objects.requireNonNullElse(marker.getAttributes(), Map.of());
            if (wanted.getOrDefault(attributes, 0) > 0) {
                wanted.merge(attributes, -1, Integer::sum);
            } else {
                marker.delete();
            }
        }
        for (Map.Entry<Map<String, Object>, Integer> left : wanted.entrySet()) {
            for (int i = 0; i < left.getValue(); i++) {
                file.createMarker(ProblemMarkers.TYPE, left.getKey());
            }
        }
    }

    private static Map<String, Object> attributes(FoundProblem problem) {
        Map<String, Object> attributes = new HashMap<>();
        attributes.put(IMarker.MESSAGE, shortened(problem.message()));
        attributes.put(IMarker.SEVERITY, severity(problem.severity()));
        attributes.put(IMarker.LINE_NUMBER, problem.region().line());
        attributes.put(IMarker.CHAR_START, problem.region().offset());
        attributes.put(IMarker.CHAR_END, problem.region().offset() + problem.region().length());
        attributes.put(IMarker.LOCATION, location(problem));
        attributes.put(ProblemMarkers.PATH, problem.path());
        attributes.put(ProblemMarkers.FEATURE, problem.feature());
        attributes.put(ProblemMarkers.CODE, problem.code());
        attributes.put(ProblemMarkers.SUGGESTION, problem.suggestion());
        return attributes;
    }

    private static String location(FoundProblem problem) {
        String line = "line " + problem.region().line() + ", column " + problem.region().column();
        return problem.place().isEmpty() ? line : problem.place() + ", " + line;
    }

    private static int severity(Severity severity) {
        return switch (severity) {
            case ERROR -> IMarker.SEVERITY_ERROR;
            case WARNING -> IMarker.SEVERITY_WARNING;
            case INFO -> IMarker.SEVERITY_INFO;
        };
    }

    /** Markers hold texts up to a limit. */
    private static String shortened(String message) {
        return message.length() <= MOST_CHARACTERS ? message : message.substring(0, MOST_CHARACTERS);
    }
}
