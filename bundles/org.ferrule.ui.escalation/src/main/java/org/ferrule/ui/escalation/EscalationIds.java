/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.escalation;

/** Ids that other bundles may refer to. */
public final class EscalationIds {

    /** The editor of cases. */
    public static final String CASE_EDITOR = "org.ferrule.ui.escalation.caseEditor";

    /** The editor of shelves. */
    public static final String SHELF_EDITOR = "org.ferrule.ui.escalation.shelfEditor";

    /** The editor of technique libraries. */
    public static final String TECHNIQUES_EDITOR = "org.ferrule.ui.escalation.techniquesEditor";

    /** The view that tells what is ready for which case. */
    public static final String READY_VIEW = "org.ferrule.ui.escalation.ready";

    /** The perspective in which cases are planned. */
    public static final String PERSPECTIVE = "org.ferrule.ui.escalation.perspective";

    private EscalationIds() {
    }
}
