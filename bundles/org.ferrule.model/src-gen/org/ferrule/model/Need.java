/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;

import org.ferrule.quantity.Dimension;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Need</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * What must hold before a technique or a set-up may be begun: one of a fact, a vessel and a branch.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.Need#getFact <em>Fact</em>}</li>
 *   <li>{@link org.ferrule.model.Need#getVessel <em>Vessel</em>}</li>
 *   <li>{@link org.ferrule.model.Need#getBranch <em>Branch</em>}</li>
 * </ul>
 *
 * @see org.ferrule.model.ModelPackage#getNeed()
 * @model
 * @generated
 */
public interface Need extends Element
{
	/**
	 * Returns the value of the '<em><b>Fact</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The id of a fact that must have been stated.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Fact</em>' attribute.
	 * @see #setFact(String)
	 * @see org.ferrule.model.ModelPackage#getNeed_Fact()
	 * @model annotation="https://ferrule.invalid/annotation/1 refers='Fact'"
	 * @generated
	 */
	String getFact();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Need#getFact <em>Fact</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Fact</em>' attribute.
	 * @see #getFact()
	 * @generated
	 */
	void setFact(String value);

	/**
	 * Returns the value of the '<em><b>Vessel</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The range in which the reference diameter at the lesion must lie; one end may be open.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Vessel</em>' attribute.
	 * @see #setVessel(Dimension)
	 * @see org.ferrule.model.ModelPackage#getNeed_Vessel()
	 * @model dataType="org.ferrule.model.Dimension"
	 * @generated
	 */
	Dimension getVessel();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Need#getVessel <em>Vessel</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Vessel</em>' attribute.
	 * @see #getVessel()
	 * @generated
	 */
	void setVessel(Dimension value);

	/**
	 * Returns the value of the '<em><b>Branch</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The range in which the diameter of a side branch must lie; one end may be open.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Branch</em>' attribute.
	 * @see #setBranch(Dimension)
	 * @see org.ferrule.model.ModelPackage#getNeed_Branch()
	 * @model dataType="org.ferrule.model.Dimension"
	 * @generated
	 */
	Dimension getBranch();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Need#getBranch <em>Branch</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Branch</em>' attribute.
	 * @see #getBranch()
	 * @generated
	 */
	void setBranch(Dimension value);

} // Need
