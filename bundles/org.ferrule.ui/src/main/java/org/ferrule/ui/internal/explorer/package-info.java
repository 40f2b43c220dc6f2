/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** What the Project Explorer shows inside of documents, and how. */
package org.ferrule.ui.internal.explorer;
