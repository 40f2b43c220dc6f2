/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Technique Library</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * The techniques for one situation, in the conventional order, with the set-ups that they need, what must be at hand when something goes wrong, and when to stop.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.TechniqueLibrary#getSituation <em>Situation</em>}</li>
 *   <li>{@link org.ferrule.model.TechniqueLibrary#getFacts <em>Facts</em>}</li>
 *   <li>{@link org.ferrule.model.TechniqueLibrary#getSetups <em>Setups</em>}</li>
 *   <li>{@link org.ferrule.model.TechniqueLibrary#getTechniques <em>Techniques</em>}</li>
 *   <li>{@link org.ferrule.model.TechniqueLibrary#getBailOut <em>Bail Out</em>}</li>
 *   <li>{@link org.ferrule.model.TechniqueLibrary#getStopRules <em>Stop Rules</em>}</li>
 * </ul>
 *
 * @see org.ferrule.model.ModelPackage#getTechniqueLibrary()
 * @model annotation="https://ferrule.invalid/annotation/1 suffix='.techniques.json' format='ferrule.techniques'"
 * @generated
 */
public interface TechniqueLibrary extends Document
{
	/**
	 * Returns the value of the '<em><b>Situation</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What has happened that calls for these techniques.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Situation</em>' attribute.
	 * @see #setSituation(String)
	 * @see org.ferrule.model.ModelPackage#getTechniqueLibrary_Situation()
	 * @model
	 * @generated
	 */
	String getSituation();

	/**
	 * Sets the value of the '{@link org.ferrule.model.TechniqueLibrary#getSituation <em>Situation</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Situation</em>' attribute.
	 * @see #getSituation()
	 * @generated
	 */
	void setSituation(String value);

	/**
	 * Returns the value of the '<em><b>Facts</b></em>' containment reference list.
	 * The list contents are of type {@link org.ferrule.model.Fact}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The statements about a case that techniques ask for.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Facts</em>' containment reference list.
	 * @see org.ferrule.model.ModelPackage#getTechniqueLibrary_Facts()
	 * @model containment="true"
	 * @generated
	 */
	EList<Fact> getFacts();

	/**
	 * Returns the value of the '<em><b>Setups</b></em>' containment reference list.
	 * The list contents are of type {@link org.ferrule.model.Setup}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What can be brought into the system to stay.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Setups</em>' containment reference list.
	 * @see org.ferrule.model.ModelPackage#getTechniqueLibrary_Setups()
	 * @model containment="true"
	 *        annotation="https://ferrule.invalid/annotation/1 label='Set-ups'"
	 * @generated
	 */
	EList<Setup> getSetups();

	/**
	 * Returns the value of the '<em><b>Techniques</b></em>' containment reference list.
	 * The list contents are of type {@link org.ferrule.model.Technique}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The techniques, in the conventional order.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Techniques</em>' containment reference list.
	 * @see org.ferrule.model.ModelPackage#getTechniqueLibrary_Techniques()
	 * @model containment="true"
	 * @generated
	 */
	EList<Technique> getTechniques();

	/**
	 * Returns the value of the '<em><b>Bail Out</b></em>' containment reference list.
	 * The list contents are of type {@link org.ferrule.model.Role}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What must be at hand when something goes wrong.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Bail Out</em>' containment reference list.
	 * @see org.ferrule.model.ModelPackage#getTechniqueLibrary_BailOut()
	 * @model containment="true"
	 *        annotation="https://ferrule.invalid/annotation/1 label='For bail-out'"
	 * @generated
	 */
	EList<Role> getBailOut();

	/**
	 * Returns the value of the '<em><b>Stop Rules</b></em>' containment reference list.
	 * The list contents are of type {@link org.ferrule.model.StopRule}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * When to stop the whole. Published limits disagree, so there may be several for one resource.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Stop Rules</em>' containment reference list.
	 * @see org.ferrule.model.ModelPackage#getTechniqueLibrary_StopRules()
	 * @model containment="true"
	 * @generated
	 */
	EList<StopRule> getStopRules();

} // TechniqueLibrary
