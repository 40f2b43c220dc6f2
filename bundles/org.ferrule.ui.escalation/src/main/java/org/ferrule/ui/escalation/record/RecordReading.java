/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.escalation.record;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.ferrule.engine.closed.ClosedCase;
import org.ferrule.engine.closed.Fingerprint;
import org.ferrule.engine.closed.RecordNames;
import org.ferrule.engine.closed.StoredFiles;
import org.ferrule.model.CaseDocument;
import org.ferrule.model.Closing;
import org.ferrule.ui.document.DocumentFiles;
import org.ferrule.ui.escalation.live.CaseDocuments;
import org.ferrule.ui.escalation.live.LivePlan;

/** Reads the record of a case: the case on the display's thread, the files that it rests on wherever there is time. */
final class RecordReading {

    private RecordReading() {
    }

    /** Returns what is left to do, on any thread; nothing where the case is not closed. On the display's thread. */
    static Optional<Supplier<ClosedCase>> of(LivePlan live) {
        return live.file().filter(file -> file.getClosing() != null).map(file -> {
            ClosedCase closed = ClosedCase.of(file, names(live.documents(), file), List.of());
            Closing copy = EcoreUtil.copy(file.getClosing());
            StoredFiles files = files(live.session().file());
            return () -> closed.beside(Fingerprint.of(copy, files));
        });
    }

    private static RecordNames names(CaseDocuments documents, CaseDocument file) {
        return new RecordNames(documents.libraries(file, new ArrayList<>()), documents.techniques(file),
                documents.shelf(file));
    }

    private static StoredFiles files(IFile from) {
        return path -> {
            Optional<IFile> file = DocumentFiles.resolve(from, path).filter(IFile::exists);
            try {
                return file.isEmpty() ? Optional.empty() : Optional.of(file.get().readAllBytes());
            } catch (CoreException e) {
                throw new IOException(e.getMessage(), e);
            }
        };
    }
}
