/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Technique</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A way to get a device across.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.Technique#getAxis <em>Axis</em>}</li>
 *   <li>{@link org.ferrule.model.Technique#getAfter <em>After</em>}</li>
 *   <li>{@link org.ferrule.model.Technique#getTries <em>Tries</em>}</li>
 * </ul>
 *
 * @see org.ferrule.model.ModelPackage#getTechnique()
 * @model
 * @generated
 */
public interface Technique extends Move, Advised
{
	/**
	 * Returns the value of the '<em><b>Axis</b></em>' attribute.
	 * The literals are from the enumeration {@link org.ferrule.model.TechniqueAxis}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What it does about the lesion.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Axis</em>' attribute.
	 * @see org.ferrule.model.TechniqueAxis
	 * @see #isSetAxis()
	 * @see #unsetAxis()
	 * @see #setAxis(TechniqueAxis)
	 * @see org.ferrule.model.ModelPackage#getTechnique_Axis()
	 * @model unsettable="true" required="true"
	 *        annotation="https://ferrule.invalid/annotation/1 position='after name'"
	 * @generated
	 */
	TechniqueAxis getAxis();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Technique#getAxis <em>Axis</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Axis</em>' attribute.
	 * @see org.ferrule.model.TechniqueAxis
	 * @see #isSetAxis()
	 * @see #unsetAxis()
	 * @see #getAxis()
	 * @generated
	 */
	void setAxis(TechniqueAxis value);

	/**
	 * Unsets the value of the '{@link org.ferrule.model.Technique#getAxis <em>Axis</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isSetAxis()
	 * @see #getAxis()
	 * @see #setAxis(TechniqueAxis)
	 * @generated
	 */
	void unsetAxis();

	/**
	 * Returns whether the value of the '{@link org.ferrule.model.Technique#getAxis <em>Axis</em>}' attribute is set.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return whether the value of the '<em>Axis</em>' attribute is set.
	 * @see #unsetAxis()
	 * @see #getAxis()
	 * @see #setAxis(TechniqueAxis)
	 * @generated
	 */
	boolean isSetAxis();

	/**
	 * Returns the value of the '<em><b>After</b></em>' attribute list.
	 * The list contents are of type {@link java.lang.String}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The ids of the techniques that must have been tried before.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>After</em>' attribute list.
	 * @see org.ferrule.model.ModelPackage#getTechnique_After()
	 * @model unique="false"
	 *        annotation="https://ferrule.invalid/annotation/1 position='after setups' refers='Technique' label='Only after'"
	 * @generated
	 */
	EList<String> getAfter();

	/**
	 * Returns the value of the '<em><b>Tries</b></em>' containment reference list.
	 * The list contents are of type {@link org.ferrule.model.PlannedTry}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * One for each time that it may be tried, in order; none for one that only looks, or ends the ladder.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Tries</em>' containment reference list.
	 * @see org.ferrule.model.ModelPackage#getTechnique_Tries()
	 * @model containment="true"
	 *        annotation="https://ferrule.invalid/annotation/1 position='after after'"
	 * @generated
	 */
	EList<PlannedTry> getTries();

} // Technique
