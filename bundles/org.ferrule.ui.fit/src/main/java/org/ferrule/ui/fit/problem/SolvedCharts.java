/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.problem;

import java.lang.ref.SoftReference;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;

import org.eclipse.core.resources.IFile;
import org.ferrule.engine.catalogue.LibraryReader;
import org.ferrule.engine.chart.OpenChart;
import org.ferrule.engine.chart.SolvedChart;
import org.ferrule.model.Document;

/** Keeps the answers of each chart as long as none of its documents was read anew. Safe for every thread. */
final class SolvedCharts {

    private static final SoftReference<Kept> NOTHING = new SoftReference<>(null);

    // a large chart holds tens of megabytes, which may be needed for something else
    private final Map<IFile, SoftReference<Kept>> kept = new ConcurrentHashMap<>();

    /** The answers of a chart, and the documents that they were worked out from. */
    private record Kept(List<Document> documents, SolvedChart solved) {

        boolean isOf(List<Document> others) {
            if (others.size() != documents.size()) {
                return false;
            }
            for (int i = 0; i < others.size(); i++) {
                if (others.get(i) != documents.get(i)) {
                    return false;
                }
            }
            return true;
        }
    }

    SolvedChart of(IFile file, OpenChart open, Supplier<SolvedChart> solving) {
        List<Document> documents = documents(open);
        Kept known = kept.getOrDefault(file, NOTHING).get();
        if (known != null && known.isOf(documents)) {
            return known.solved();
        }
        SolvedChart solved = solving.get();
        kept.put(file, new SoftReference<>(new Kept(documents, solved)));
        return solved;
    }

    private static List<Document> documents(OpenChart open) {
        List<Document> documents = new ArrayList<>(List.of(open.chart(), open.rules()));
        open.libraries().stream().map(LibraryReader::library).forEach(documents::add);
        return documents;
    }
}
