/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.chart;

import java.util.Collection;
import java.util.Hashtable;
import java.util.Optional;

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

    private AnswersInEditors() {
    }

    static ServiceRegistration<LiveAnswers> offer(LiveAnswers answers, IFile chart) {
        Hashtable<String, String> properties = new Hashtable<>();
        properties.put(FILE, chart.getFullPath().toString());
        return context().registerService(LiveAnswers.class, answers, properties);
    }

    /** Returns the answers for a chart, if an editor has any that are up to date. */
    public static Optional<SolvedChart> of(IFile chart) {
        try {
            Collection<ServiceReference<LiveAnswers>> found = context().getServiceReferences(LiveAnswers.class, null);
            return found.stream().filter(r -> chart.getFullPath().toString().equals(r.getProperty(FILE)))
                    .map(context()::getService).filter(answers -> answers != null && !answers.stale())
                    .flatMap(answers -> answers.shown().stream()).findFirst();
        } catch (InvalidSyntaxException e) {
            ILog.of(AnswersInEditors.class).error(e.getMessage(), e);
            return Optional.empty();
        }
    }

    private static BundleContext context() {
        return FrameworkUtil.getBundle(AnswersInEditors.class).getBundleContext();
    }
}
