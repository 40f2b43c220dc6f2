/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.effect;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ILog;
import org.ferrule.engine.catalogue.LibraryReader;
import org.ferrule.engine.chart.OpenChart;
import org.ferrule.model.DeviceLibrary;
import org.ferrule.model.Document;
import org.ferrule.model.FitChart;
import org.ferrule.model.RuleSet;
import org.ferrule.ui.Services;
import org.ferrule.ui.document.DocumentFiles;
import org.ferrule.ui.document.DocumentRecords;
import org.ferrule.ui.fit.chart.LiveAnswers;

/** An open chart with its documents: as they are being edited, or with one file as it was saved last. */
final class SavedState {

    private final DocumentRecords records = Services.get(DocumentRecords.class);
    private final LiveAnswers answers;

    SavedState(LiveAnswers answers) {
        this.answers = answers;
    }

    /** The chart as everything stands now. */
    Optional<OpenChart> now() {
        return answers.chart().flatMap(chart -> open(chart, Optional.empty()));
    }

    /** The chart as it was before a file was edited; nothing if the file cannot be read. */
    Optional<OpenChart> before(IFile edited) {
        Optional<Document> saved = onDisk(edited);
        Optional<FitChart> chart = answers.file().equals(edited) ? saved.map(FitChart.class::cast) : answers.chart();
        return saved.isEmpty() ? Optional.empty() : chart.flatMap(found -> open(found, Optional.of(edited)));
    }

    private Optional<OpenChart> open(FitChart chart, Optional<IFile> saved) {
        List<LibraryReader> readers = new ArrayList<>();
        chart.getLibraries().forEach(path -> library(path, saved)
                .ifPresent(library -> readers.add(new LibraryReader(path, library))));
        return chart.getRules() == null ? Optional.empty()
                : rules(chart.getRules(), saved).map(rules -> new OpenChart(chart, readers, rules));
    }

    private Optional<DeviceLibrary> library(String path, Optional<IFile> saved) {
        return isOf(path, saved) ? onDisk(saved.get()).map(DeviceLibrary.class::cast)
                : answers.documents().library(path);
    }

    private Optional<RuleSet> rules(String path, Optional<IFile> saved) {
        return isOf(path, saved) ? onDisk(saved.get()).map(RuleSet.class::cast) : answers.documents().rules(path);
    }

    private boolean isOf(String path, Optional<IFile> file) {
        return file.isPresent() && DocumentFiles.resolve(answers.file(), path).equals(file);
    }

    private Optional<Document> onDisk(IFile file) {
        try {
            return file.exists() ? records.onDisk(file).document() : Optional.empty();
        } catch (CoreException e) {
            ILog.of(SavedState.class).log(e.getStatus());
            return Optional.empty();
        }
    }
}
