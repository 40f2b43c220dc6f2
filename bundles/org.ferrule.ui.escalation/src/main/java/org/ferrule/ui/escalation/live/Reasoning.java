/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.ui.escalation.live;

import java.util.concurrent.CancellationException;
import java.util.concurrent.Executor;
import java.util.function.BiConsumer;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.ferrule.escalation.plan.Plan;
import org.ferrule.plansheet.why.OrderReasons;

/** Works out what the order of a plan hangs on, away from the display's thread, and gives up when it is not wanted. */
final class Reasoning {

    private final Executor onDisplay;
    private Job job;

    Reasoning(Executor onDisplay) {
        this.onDisplay = onDisplay;
    }

    /** Begins with a plan, and gives up the one before. */
    void start(Plan plan, BiConsumer<Plan, OrderReasons> known) {
        cancel();
        job = new Work(plan, known);
        job.schedule();
    }

    /** Nobody wants to know any more. */
    void cancel() {
        if (job != null) {
            job.cancel();
            job = null;
        }
    }

    private final class Work extends Job {

        private final Plan plan;
        private final BiConsumer<Plan, OrderReasons> known;

        Work(Plan plan, BiConsumer<Plan, OrderReasons> known) {
            super("Work out what the order hangs on");
            setSystem(true);
            setPriority(Job.DECORATE);
            this.plan = plan;
            this.known = known;
        }

        @Override
        protected IStatus run(IProgressMonitor monitor) {
            try {
                OrderReasons reasons = OrderReasons.of(plan, monitor::isCanceled);
                onDisplay.execute(() -> known.accept(plan, reasons));
                return Status.OK_STATUS;
            } catch (CancellationException e) {
                return Status.CANCEL_STATUS;
            }
        }
    }
}
