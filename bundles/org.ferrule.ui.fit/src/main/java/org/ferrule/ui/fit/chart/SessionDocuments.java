/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.chart;

import java.util.Optional;

import org.eclipse.core.resources.IFile;
import org.ferrule.engine.live.ChartDocuments;
import org.ferrule.model.DeviceLibrary;
import org.ferrule.model.RuleSet;
import org.ferrule.ui.document.DocumentFiles;
import org.ferrule.ui.document.DocumentSession;
import org.ferrule.ui.document.HeldDocuments;

/** The documents that a chart refers to, as their own editors show them. */
public final class SessionDocuments implements ChartDocuments, AutoCloseable {

    private final IFile from;
    private final HeldDocuments held;

    /**
     * Creates documents.
     *
     * @param from the file from which references lead to them
     * @param replaced is run when one of them was replaced by another
     */
    public SessionDocuments(IFile from, Runnable replaced) {
        this.from = from;
        held = new HeldDocuments(from, change -> {
            if (change.reloaded()) {
                replaced.run();
            }
        });
    }

    @Override
    public Optional<DeviceLibrary> library(String path) {
        return held.find(path, DeviceLibrary.class);
    }

    @Override
    public Optional<RuleSet> rules(String path) {
        return held.find(path, RuleSet.class);
    }

    /** Tells whether a document has changes that are not stored. */
    public boolean unsaved(String path) {
        return DocumentFiles.resolve(from, path).filter(IFile::exists).flatMap(held::session)
                .filter(DocumentSession::dirty).isPresent();
    }

    /** Tells whether the file is there, but was missing when it was looked for, or the other way round. */
    boolean cameOrWent(IFile file) {
        return held.cameOrWent(file);
    }

    @Override
    public void close() {
        held.close();
    }
}
