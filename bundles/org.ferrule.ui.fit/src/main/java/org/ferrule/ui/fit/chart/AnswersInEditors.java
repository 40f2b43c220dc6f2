/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.chart;

import java.util.Collection;
import java.util.Hashtable;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.BooleanSupplier;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.ILog;
import org.ferrule.engine.chart.SolvedChart;
import org.osgi.framework.BundleContext;
import org.osgi.framework.FrameworkUtil;
import org.osgi.framework.InvalidSyntaxException;
import org.osgi.framework.ServiceReference;
import org.osgi.framework.ServiceRegistration;

/** Finds the answers that an open editor has for a chart, so that nobody works them out twice. For every thread. */
public final class AnswersInEditors {

    private static final String FILE = "file";
    private static final int PAUSE_MS = 50;
    /** The display's thread, which has to publish the answers, may itself wait for the one that asks here. */
    private static final int LONGEST_WAIT_MS = 1000;

    private AnswersInEditors() {
    }

    static ServiceRegistration<LiveAnswers> offer(LiveAnswers answers, IFile chart) {
        Hashtable<String, String> properties = new Hashtable<>();
        properties.put(FILE, chart.getFullPath().toString());
        return context().registerService(LiveAnswers.class, answers, properties);
    }

    /**
     * Returns the answers for a chart, if it is open in an editor; waits a little while they are being
     * worked out.
     *
     * @param givesUp whether to wait no longer
     */
    public static Optional<SolvedChart> of(IFile chart, BooleanSupplier givesUp) {
        long end = System.currentTimeMillis() + LONGEST_WAIT_MS;
        Optional<LiveAnswers> editor = editor(chart);
        while (editor.filter(LiveAnswers::isWorking).isPresent() && !givesUp.getAsBoolean()
                && System.currentTimeMillis() < end && pause()) {
            editor = editor(chart);
        }
        return editor.filter(answers -> !answers.stale()).flatMap(LiveAnswers::shown);
    }

    /** Returns the answers of all charts that are open in editors. */
    public static List<LiveAnswers> all() {
        try {
            return context().getServiceReferences(LiveAnswers.class, null).stream().map(context()::getService)
                    .filter(Objects::nonNull).toList();
        } catch (InvalidSyntaxException e) {
            ILog.of(AnswersInEditors.class).error(e.getMessage(), e);
            return List.of();
        }
    }

    private static boolean pause() {
        try {
            Thread.sleep(PAUSE_MS);
            return true;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    private static Optional<LiveAnswers> editor(IFile chart) {
        try {
            Collection<ServiceReference<LiveAnswers>> found = context().getServiceReferences(LiveAnswers.class, null);
            return found.stream().filter(r -> chart.getFullPath().toString().equals(r.getProperty(FILE)))
                    .map(context()::getService).filter(Objects::nonNull).findFirst();
        } catch (InvalidSyntaxException e) {
            ILog.of(AnswersInEditors.class).error(e.getMessage(), e);
            return Optional.empty();
        }
    }

    private static BundleContext context() {
        return FrameworkUtil.getBundle(AnswersInEditors.class).getBundleContext();
    }
}
