/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;

import org.ferrule.quantity.Dimension;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Marker</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A radiopaque marker.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.Marker#getAt <em>At</em>}</li>
 *   <li>{@link org.ferrule.model.Marker#getWidth <em>Width</em>}</li>
 * </ul>
 *
 * @see org.ferrule.model.ModelPackage#getMarker()
 * @model
 * @generated
 */
public interface Marker extends Sourced
{
	/**
	 * Returns the value of the '<em><b>At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The station of its distal edge from the distal tip (mm, cm or in).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>At</em>' attribute.
	 * @see #setAt(Dimension)
	 * @see org.ferrule.model.ModelPackage#getMarker_At()
	 * @model dataType="org.ferrule.model.Dimension"
	 *        annotation="https://ferrule.invalid/annotation/1 figure='STATION' label='Station of the distal edge'"
	 * @generated
	 */
	Dimension getAt();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Marker#getAt <em>At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>At</em>' attribute.
	 * @see #getAt()
	 * @generated
	 */
	void setAt(Dimension value);

	/**
	 * Returns the value of the '<em><b>Width</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Its length along the shaft (mm or in).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Width</em>' attribute.
	 * @see #setWidth(Dimension)
	 * @see org.ferrule.model.ModelPackage#getMarker_Width()
	 * @model dataType="org.ferrule.model.Dimension"
	 *        annotation="https://ferrule.invalid/annotation/1 figure='LENGTH'"
	 * @generated
	 */
	Dimension getWidth();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Marker#getWidth <em>Width</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Width</em>' attribute.
	 * @see #getWidth()
	 * @generated
	 */
	void setWidth(Dimension value);

} // Marker
