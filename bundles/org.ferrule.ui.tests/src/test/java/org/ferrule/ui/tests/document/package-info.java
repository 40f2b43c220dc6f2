/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** Problems of documents: markers of the saved and of the unsaved state. */
package org.ferrule.ui.tests.document;
