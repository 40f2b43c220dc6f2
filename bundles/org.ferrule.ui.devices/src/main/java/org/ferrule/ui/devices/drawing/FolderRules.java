/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.drawing;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.swt.widgets.Display;
import org.ferrule.engine.translate.RuleTranslator;
import org.ferrule.fit.rules.RuleSetException;
import org.ferrule.model.DocumentKind;
import org.ferrule.model.RuleSet;
import org.ferrule.ui.Services;
import org.ferrule.ui.document.DocumentFiles;
import org.ferrule.ui.document.DocumentRecords;

/**
 * The rule set beside a library, as it is being edited. Which one is meant can be told only if there is exactly one in
 * the folder.
 */
final class FolderRules {

    private final IFile library;
    private final DocumentRecords records = Services.get(DocumentRecords.class);
    private final Consumer<IFile> follower = this::changed;
    private final Display display = Display.getCurrent();
    private final Runnable listener;
    private DrawingRules current;

    /** Creates the rules; the listener is told on the display's thread when they have changed. */
    FolderRules(IFile library, Runnable listener) {
        this.library = library;
        this.listener = listener;
        records.addListener(follower);
    }

    void dispose() {
        records.removeListener(follower);
    }

    private void changed(IFile file) {
        boolean mayMatter = file.getParent().equals(library.getParent())
                && DocumentFiles.kind(file.getName()).filter(DocumentKind.RULES::equals).isPresent();
        if (mayMatter && !display.isDisposed()) {
            display.asyncExec(this::forget);
        }
    }

    private void forget() {
        current = null;
        listener.run();
    }

    DrawingRules get() {
        if (current == null) {
            current = read();
        }
        return current;
    }

    private DrawingRules read() {
        try {
            List<IFile> files = Stream.of(library.getParent().members()).filter(FolderRules::isRuleSet)
                    .map(IFile.class::cast).toList();
            return files.size() == 1 ? read(files.get(0))
                    : DrawingRules.bare("the folder has " + (files.isEmpty() ? "no" : files.size()) + " rule sets");
        } catch (CoreException e) {
            return DrawingRules.bare(e.getMessage());
        }
    }

    private static boolean isRuleSet(IResource resource) {
        return resource instanceof IFile
                && DocumentFiles.kind(resource.getName()).filter(DocumentKind.RULES::equals).isPresent();
    }

    private DrawingRules read(IFile file) throws CoreException {
        Optional<RuleSet> rules = records.of(file).document().map(RuleSet.class::cast);
        if (rules.isEmpty()) {
            return DrawingRules.bare(file.getName() + " cannot be read");
        }
        try {
            return new DrawingRules(RuleTranslator.translate(rules.get()), "Tolerances assumed by " + file.getName());
        } catch (RuleSetException e) {
            return DrawingRules.bare(e.getMessage());
        }
    }
}
