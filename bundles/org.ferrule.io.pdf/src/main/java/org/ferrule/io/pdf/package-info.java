/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Writes documents of pictures as PDF: vector graphics, text that can be selected and searched, fonts embedded.
 *
 * <p>The fonts are four faces of DejaVu Sans, which the build takes out of a published archive and puts, with their
 * licence, into this module beside the classes.
 */
package org.ferrule.io.pdf;
