/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;

import org.ferrule.quantity.Dimension;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Allowance</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A length to allow for.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.Allowance#getPurpose <em>Purpose</em>}</li>
 *   <li>{@link org.ferrule.model.Allowance#getLength <em>Length</em>}</li>
 * </ul>
 *
 * @see org.ferrule.model.ModelPackage#getAllowance()
 * @model annotation="https://ferrule.invalid/annotation/1 label='Allowance of length'"
 * @generated
 */
public interface Allowance extends Sourced
{
	/**
	 * Returns the value of the '<em><b>Purpose</b></em>' attribute.
	 * The literals are from the enumeration {@link org.ferrule.model.AllowancePurpose}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What it is for.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Purpose</em>' attribute.
	 * @see org.ferrule.model.AllowancePurpose
	 * @see #isSetPurpose()
	 * @see #unsetPurpose()
	 * @see #setPurpose(AllowancePurpose)
	 * @see org.ferrule.model.ModelPackage#getAllowance_Purpose()
	 * @model unsettable="true" required="true"
	 * @generated
	 */
	AllowancePurpose getPurpose();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Allowance#getPurpose <em>Purpose</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Purpose</em>' attribute.
	 * @see org.ferrule.model.AllowancePurpose
	 * @see #isSetPurpose()
	 * @see #unsetPurpose()
	 * @see #getPurpose()
	 * @generated
	 */
	void setPurpose(AllowancePurpose value);

	/**
	 * Unsets the value of the '{@link org.ferrule.model.Allowance#getPurpose <em>Purpose</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isSetPurpose()
	 * @see #getPurpose()
	 * @see #setPurpose(AllowancePurpose)
	 * @generated
	 */
	void unsetPurpose();

	/**
	 * Returns whether the value of the '{@link org.ferrule.model.Allowance#getPurpose <em>Purpose</em>}' attribute is set.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return whether the value of the '<em>Purpose</em>' attribute is set.
	 * @see #unsetPurpose()
	 * @see #getPurpose()
	 * @see #setPurpose(AllowancePurpose)
	 * @generated
	 */
	boolean isSetPurpose();

	/**
	 * Returns the value of the '<em><b>Length</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How much to allow for (cm or mm).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Length</em>' attribute.
	 * @see #setLength(Dimension)
	 * @see org.ferrule.model.ModelPackage#getAllowance_Length()
	 * @model dataType="org.ferrule.model.Dimension" required="true"
	 *        annotation="https://ferrule.invalid/annotation/1 figure='LENGTH'"
	 * @generated
	 */
	Dimension getLength();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Allowance#getLength <em>Length</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Length</em>' attribute.
	 * @see #getLength()
	 * @generated
	 */
	void setLength(Dimension value);

} // Allowance
