/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.effect;

import java.lang.reflect.InvocationTargetException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.OperationCanceledException;
import org.eclipse.core.runtime.SubMonitor;
import org.eclipse.ui.PlatformUI;
import org.ferrule.fit.matrix.Progress;
import org.ferrule.fit.matrix.SolveCancelledException;
import org.ferrule.ui.document.DocumentSession;
import org.ferrule.ui.fit.chart.AnswersInEditors;
import org.ferrule.ui.fit.chart.LiveAnswers;

/**
 * What the unsaved edits of a document change in all charts that are open.
 *
 * @param charts how many open charts depend on the document
 * @param changes the verdicts that change
 */
record EditEffect(int charts, List<VerdictChange> changes) {

    EditEffect {
        changes = List.copyOf(changes);
    }

    /**
     * Works it out, with progress that the user can cancel. To be called on the display's thread.
     *
     * @throws OperationCanceledException if the user does
     */
    static EditEffect of(DocumentSession session) {
        IFile edited = session.file();
        List<LiveAnswers> open = AnswersInEditors.all().stream()
                .filter(answers -> answers.refersTo(edited) || answers.file().equals(edited)).toList();
        List<ChartEffect> prepared = session.dirty()
                ? open.stream().map(answers -> ChartEffect.of(answers, edited)).flatMap(Optional::stream).toList()
                : List.of();
        List<VerdictChange> changes = new ArrayList<>();
        if (!prepared.isEmpty()) {
            run(prepared, changes);
        }
        return new EditEffect(open.size(), changes);
    }

    private static void run(List<ChartEffect> prepared, List<VerdictChange> changes) {
        try {
            PlatformUI.getWorkbench().getProgressService().busyCursorWhile(monitor -> {
                SubMonitor each = SubMonitor.convert(monitor, "Comparing verdicts", prepared.size());
                for (ChartEffect effect : prepared) {
                    changes.addAll(effect.solve(new UntilCancelled(monitor)));
                    each.worked(1);
                }
            });
        } catch (InvocationTargetException e) {
            if (e.getCause() instanceof SolveCancelledException) {
                throw new OperationCanceledException();
            }
            throw new IllegalStateException(e.getCause());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new OperationCanceledException();
        }
    }

    private record UntilCancelled(IProgressMonitor monitor) implements Progress {

        @Override
        public void worked(int done, int total) {
            // a chart is one step of the whole
        }

        @Override
        public boolean isCancelled() {
            return monitor.isCanceled();
        }
    }
}
