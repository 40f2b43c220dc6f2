/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.escalation.live;

import java.util.List;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BiConsumer;
import java.util.function.Consumer;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.ferrule.engine.plan.AssembledCase;
import org.ferrule.escalation.plan.Plan;

/** Plans away from the display's thread, always what was asked for last. */
final class Planning extends Job {

    /** A case, and how often others were asked for before. */
    private record Asked(int generation, AssembledCase assembled) {
    }

    private final AtomicInteger generation = new AtomicInteger();
    private final Executor onDisplay;
    private final BiConsumer<AssembledCase, Plan> planned;
    private final Consumer<List<String>> failed;
    private volatile Asked wanted;

    Planning(Executor onDisplay, BiConsumer<AssembledCase, Plan> planned, Consumer<List<String>> failed) {
        super("Plan the case");
        setSystem(true);
        this.onDisplay = onDisplay;
        this.planned = planned;
        this.failed = failed;
    }

    /** What is being planned is of no use any more. */
    void outdate() {
        generation.incrementAndGet();
    }

    void start(AssembledCase assembled) {
        wanted = new Asked(generation.get(), assembled);
        schedule();
    }

    @Override
    protected IStatus run(IProgressMonitor monitor) {
        Asked asked = wanted;
        try {
            Plan plan = asked.assembled().plan();
            publish(asked, () -> planned.accept(asked.assembled(), plan));
        } catch (IllegalArgumentException e) {
            publish(asked, () -> failed.accept(List.of(e.getMessage())));
        }
        return Status.OK_STATUS;
    }

    private void publish(Asked asked, Runnable result) {
        onDisplay.execute(() -> {
            if (asked.generation() == generation.get()) {
                result.run();
            }
        });
    }
}
