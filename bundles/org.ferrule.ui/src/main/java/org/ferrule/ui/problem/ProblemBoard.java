/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.problem;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;

import org.eclipse.core.resources.IFile;

/** The problems of every document as they were found last. Safe for every thread. */
public final class ProblemBoard {

    private final Map<IFile, List<FoundProblem>> problems = new ConcurrentHashMap<>();
    private final List<Consumer<IFile>> listeners = new CopyOnWriteArrayList<>();

    /** Returns the problems of the file, in the order of the text. */
    public List<FoundProblem> of(IFile file) {
        return problems.getOrDefault(file, List.of());
    }

    /** Replaces the problems of the file and tells the listeners if they differ. */
    public void put(IFile file, List<FoundProblem> found) {
        if (!found.equals(problems.put(file, List.copyOf(found)))) {
            listeners.forEach(listener -> listener.accept(file));
        }
    }

    /** Adds a listener that is told, on any thread, which file's problems have changed. */
    public void addListener(Consumer<IFile> listener) {
        listeners.add(listener);
    }

    /** Removes a listener. */
    public void removeListener(Consumer<IFile> listener) {
        listeners.remove(listener);
    }
}
