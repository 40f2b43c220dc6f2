/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** A report of errors that a user can send: the log and the versions, and of the documents only what is ticked. */
package org.ferrule.ui.internal.report;
