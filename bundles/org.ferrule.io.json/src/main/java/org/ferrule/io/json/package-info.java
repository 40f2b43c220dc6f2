/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Documents as JSON text: reading with places and problems, canonical writing, safe files, and an EMF resource on top.
 * The Ecore drives both ways: a class is an object, a feature is a key of the same name, in the Ecore's order. Keys
 * that the model does not know are kept. Nothing here needs a workbench.
 */
package org.ferrule.io.json;
