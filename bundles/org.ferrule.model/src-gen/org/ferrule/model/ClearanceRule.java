/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;

import org.eclipse.emf.common.util.EList;

import org.ferrule.quantity.Dimension;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Clearance Rule</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * The diametral clearance that a passage needs. The most specific rule holds; the one without kinds is the default and must exist.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.ClearanceRule#getOuter <em>Outer</em>}</li>
 *   <li>{@link org.ferrule.model.ClearanceRule#getInner <em>Inner</em>}</li>
 *   <li>{@link org.ferrule.model.ClearanceRule#getRequired <em>Required</em>}</li>
 * </ul>
 *
 * @see org.ferrule.model.ModelPackage#getClearanceRule()
 * @model
 * @generated
 */
public interface ClearanceRule extends Sourced
{
	/**
	 * Returns the value of the '<em><b>Outer</b></em>' attribute list.
	 * The list contents are of type {@link org.ferrule.model.DeviceKind}.
	 * The literals are from the enumeration {@link org.ferrule.model.DeviceKind}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The kinds of outer device; all when none is named.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Outer</em>' attribute list.
	 * @see org.ferrule.model.DeviceKind
	 * @see org.ferrule.model.ModelPackage#getClearanceRule_Outer()
	 * @model unique="false"
	 *        annotation="https://ferrule.invalid/annotation/1 label='Kinds of outer device'"
	 * @generated
	 */
	EList<DeviceKind> getOuter();

	/**
	 * Returns the value of the '<em><b>Inner</b></em>' attribute list.
	 * The list contents are of type {@link org.ferrule.model.DeviceKind}.
	 * The literals are from the enumeration {@link org.ferrule.model.DeviceKind}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The kinds of inner device; all when none is named.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Inner</em>' attribute list.
	 * @see org.ferrule.model.DeviceKind
	 * @see org.ferrule.model.ModelPackage#getClearanceRule_Inner()
	 * @model unique="false"
	 *        annotation="https://ferrule.invalid/annotation/1 label='Kinds of inner device'"
	 * @generated
	 */
	EList<DeviceKind> getInner();

	/**
	 * Returns the value of the '<em><b>Required</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The required difference between the inner diameter of the lumen and the diameter that passes (mm or in).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Required</em>' attribute.
	 * @see #setRequired(Dimension)
	 * @see org.ferrule.model.ModelPackage#getClearanceRule_Required()
	 * @model dataType="org.ferrule.model.Dimension" required="true"
	 *        annotation="https://ferrule.invalid/annotation/1 figure='CLEARANCE' label='Required clearance'"
	 * @generated
	 */
	Dimension getRequired();

	/**
	 * Sets the value of the '{@link org.ferrule.model.ClearanceRule#getRequired <em>Required</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Required</em>' attribute.
	 * @see #getRequired()
	 * @generated
	 */
	void setRequired(Dimension value);

} // ClearanceRule
